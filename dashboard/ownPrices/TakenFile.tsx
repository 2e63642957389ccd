import { many } from "../words/ownPrices.ts";
import { download } from "./download.ts";
import type { Fault } from "./reading.ts";
import type { Taken } from "./take.ts";

/** Faults told on the page; the rest stand in the download. */
const MOST_TOLD = 20;

/** What came of one file: a sentence, what is wrong by line and column, and the rejected rows to mend. */
export function TakenFile({ name, told }: { name: string; told: Taken }) {
  const { said, faults, twice, rejected, rejectedCsv } = told;
  const beyond = faults.length - MOST_TOLD;
  return (
    <div class={faults.length > 0 ? "taken wrongly" : "taken"}>
      <p>
        <b>{name}.</b> {said}
      </p>
      {faults.length > 0 && (
        <ul class="faults">
          {faults.slice(0, MOST_TOLD).map((fault) => (
            <li key={`${fault.line} ${fault.column} ${fault.message}`}>
              <b>{placeOf(fault)}</b> {fault.message}
            </li>
          ))}
        </ul>
      )}
      {beyond > 0 && <p class="small">And {many(beyond, "more fault")}; the download names them all.</p>}
      {twice.length > 0 && (
        <ul class="faults">
          {twice.slice(0, MOST_TOLD).map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      )}
      {rejectedCsv !== null && (
        <button type="button" class="btn quiet" onClick={() => download(`rejected-${name}`, rejectedCsv)}>
          Download the {rejected === 1 ? "rejected row" : `${rejected} rejected rows`}
        </button>
      )}
    </div>
  );
}

function placeOf({ line, column }: Fault): string {
  return column === null ? `Line ${line}.` : `Line ${line}, ${column}.`;
}
