import { useState } from "preact/hooks";
import { ownPrices } from "../state/ownPrices.ts";
import {
  FILE_CHOOSE,
  FILE_DROP,
  FILE_FACTS,
  FILE_NOT_LOADED,
  FILE_PRICES_TEMPLATE,
  FILE_SALES_TEMPLATE,
  FILE_TITLE,
  FILE_TOO_LARGE,
} from "../words/priceFiles.ts";
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

const NOT_LOADED: Taken = failed(FILE_NOT_LOADED);
const TOO_LARGE: Taken = failed(FILE_TOO_LARGE);

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
      <h2 id="upload-title">{FILE_TITLE}</h2>
      <p class="small">{FILE_FACTS}</p>
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
          <b>{FILE_CHOOSE}</b> <span class="small">{FILE_DROP}</span>
        </span>
      </label>
      <div role="status">
        {taken.map(({ name, told }) => (
          <TakenFile key={name} name={name} told={told} />
        ))}
      </div>
      <p class="links">
        <button type="button" class="plainbtn" onClick={() => void template("sales")}>
          {FILE_SALES_TEMPLATE}
        </button>
        <button type="button" class="plainbtn" onClick={() => void template("prices")}>
          {FILE_PRICES_TEMPLATE}
        </button>
      </p>
      <Columns vocabulary={vocabulary} />
    </section>
  );
}

function failed(said: string): Taken {
  return { said, faults: [], twice: [], rejected: 0, rejectedCsv: null };
}
