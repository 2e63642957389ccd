import { downloadRejected, faultPlace, moreFaults } from "../words/priceFiles.ts";
import { download } from "./download.ts";
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
              <b>{faultPlace(fault.line, fault.column)}</b> {fault.message}
            </li>
          ))}
        </ul>
      )}
      {beyond > 0 && <p class="small">{moreFaults(beyond)}</p>}
      {twice.length > 0 && (
        <ul class="faults">
          {twice.slice(0, MOST_TOLD).map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      )}
      {rejectedCsv !== null && (
        <button type="button" class="btn quiet" onClick={() => download(`rejected-${name}`, rejectedCsv)}>
          {downloadRejected(rejected)}
        </button>
      )}
    </div>
  );
}
