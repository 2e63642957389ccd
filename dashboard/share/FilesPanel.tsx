import { useState } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import { localDay } from "../ownPrices/days.ts";
import { MOST_BYTES, textOf } from "../ownPrices/fileText.ts";
import { ownFinds } from "../state/finds.ts";
import { describedKind } from "../words/description.ts";
import {
  FILE_HOLDS,
  FINDS_FILE_DROP,
  FINDS_FILE_FACTS,
  FINDS_FILE_OPEN,
  FINDS_FILE_TITLE,
  saveYour,
  takenLine,
  takenWords,
  unreadLine,
  WRONG_FILE,
} from "../words/findsFile.ts";
import "../style/share.css";
import { readFinds, saveFinds } from "./findsFile.ts";
import { takenFinds } from "./takeFinds.ts";

/** What came of a file, as it is told. */
interface Told {
  readonly file: string;
  readonly said: string;
  readonly lines: readonly string[];
  readonly wrong: boolean;
}

/** The user's own finds out to a file, and in from one. */
export function FilesPanel({ known }: { known: Reference }) {
  const [told, setTold] = useState<readonly Told[]>([]);
  const own = ownFinds.all.value;

  async function takeAll(files: readonly File[]): Promise<void> {
    const all: Told[] = [];
    for (const file of files) all.push(await taken(file, known));
    setTold(all);
  }

  return (
    <section class="panel later" aria-labelledby="files-title">
      <h2 id="files-title">{FINDS_FILE_TITLE}</h2>
      <p class="small">
        {FINDS_FILE_FACTS} {FILE_HOLDS}
      </p>
      {own.length > 0 && (
        <p class="acts filesave">
          <button type="button" class="btn quiet" onClick={() => saveFinds(own, localDay(new Date()))}>
            {saveYour(own.length)}
          </button>
        </p>
      )}
      <label class="drop">
        <input
          type="file"
          multiple
          accept=".json,application/json"
          onChange={(event) => {
            const input = event.currentTarget;
            void takeAll([...(input.files ?? [])]);
            // The same file can then be chosen again.
            input.value = "";
          }}
        />
        <span>
          <b>{FINDS_FILE_OPEN}</b> <span class="small">{FINDS_FILE_DROP}</span>
        </span>
      </label>
      <div role="status">
        {told.map(({ file, said, lines, wrong }) => (
          <div key={file} class={wrong ? "taken wrongly" : "taken"}>
            <p>
              <b>{file}.</b> {said}
            </p>
            {lines.length > 0 && (
              <ul class="faults">
                {lines.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            )}
          </div>
        ))}
      </div>
    </section>
  );
}

/** Takes the finds of a file in. */
async function taken(file: File, known: Reference): Promise<Told> {
  if (file.size > MOST_BYTES) return refused(file, WRONG_FILE["too-large"]);
  const read = readFinds(textOf(new Uint8Array(await file.arrayBuffer())));
  if ("wrong" in read) return refused(file, WRONG_FILE[read.wrong]);
  const finds = takenFinds(
    read.entries.flatMap((entry) => entry ?? []),
    ownFinds.all.value,
  );
  const unread = read.entries.flatMap((entry, i) => (entry === null ? [unreadLine(i + 1)] : []));
  ownFinds.putAll(finds.flatMap(({ find, as }) => (as === "same" ? [] : [find])));
  const lines = finds.flatMap((one) => {
    const { name, answers } = one.find;
    return takenLine(one, name.trim() || describedKind(answers.attributes, known)) ?? [];
  });
  return {
    file: file.name,
    said: takenWords(finds, unread.length),
    lines: [...lines, ...unread],
    wrong: unread.length > 0,
  };
}

function refused(file: File, said: string): Told {
  return { file: file.name, said, lines: [], wrong: true };
}
