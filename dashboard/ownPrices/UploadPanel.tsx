import { useState } from "preact/hooks";
import { ownPrices } from "../state/ownPrices.ts";
import { Columns } from "./Columns.tsx";
import { localDay } from "./days.ts";
import { download } from "./download.ts";
import { MOST_BYTES, textOf } from "./fileText.ts";
import { TakenFile } from "./TakenFile.tsx";
import type { Taken } from "./take.ts";
import type { Vocabulary } from "./vocabulary.ts";

interface UploadPanelProps {
  readonly vocabulary: Vocabulary;
  readonly currency: string;
}

const NOT_LOADED: Taken = failed(
  "What reads files did not load. Choose the file again once there is a signal.",
);
const TOO_LARGE: Taken = failed("This file is larger than 5 MB, so it was not read. Split it.");

/** Takes files of sales and price books in, and says what came of each. */
export function UploadPanel({ vocabulary, currency }: UploadPanelProps) {
  const [taken, setTaken] = useState<readonly { readonly name: string; readonly told: Taken }[]>([]);

  async function takeAll(files: readonly File[]): Promise<void> {
    const told: { name: string; told: Taken }[] = [];
    for (const file of files) told.push({ name: file.name, told: await takenOne(file) });
    setTaken(told);
  }

  async function takenOne(file: File): Promise<Taken> {
    if (file.size > MOST_BYTES) return TOO_LARGE;
    const text = textOf(new Uint8Array(await file.arrayBuffer()));
    const reader = await import("./take.ts").catch(() => null);
    if (reader === null) return NOT_LOADED;
    return reader.take(text, ownPrices, vocabulary, localDay(new Date()), currency);
  }

  async function template(kind: "sales" | "prices"): Promise<void> {
    const files = await import("./files.ts").catch(() => null);
    if (files === null) setTaken([{ name: `${kind}-template.csv`, told: NOT_LOADED }]);
    else if (kind === "sales") download("sales-template.csv", files.salesTemplate(vocabulary, currency));
    else download("prices-template.csv", files.priceBookTemplate(vocabulary, currency));
  }

  return (
    <section class="panel" aria-labelledby="upload-title">
      <h2 id="upload-title">Read them from a file</h2>
      <p class="small">
        Sales or a price book, as a table with commas, semicolons or tabs between its cells (CSV). Good rows
        are kept, the others told one by one.
      </p>
      <label class="drop">
        <input
          type="file"
          multiple
          accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain"
          onChange={(event) => {
            const input = event.currentTarget;
            void takeAll([...(input.files ?? [])]);
            // The same file, mended, can then be chosen again.
            input.value = "";
          }}
        />
        <span>
          <b>Choose a file</b> <span class="small">or drop it here</span>
        </span>
      </label>
      <div role="status">
        {taken.map(({ name, told }) => (
          <TakenFile key={name} name={name} told={told} />
        ))}
      </div>
      <p class="links">
        <button type="button" class="plainbtn" onClick={() => void template("sales")}>
          Template for sales
        </button>
        <button type="button" class="plainbtn" onClick={() => void template("prices")}>
          Template for a price book
        </button>
      </p>
      <Columns vocabulary={vocabulary} />
    </section>
  );
}

function failed(said: string): Taken {
  return { said, faults: [], twice: [], rejected: 0, rejectedCsv: null };
}
