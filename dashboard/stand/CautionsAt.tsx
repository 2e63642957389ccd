import type { RaisedCaution } from "../api/types.ts";
import { Warning } from "../signs/Warning.tsx";
import { sentence } from "../words/plain.ts";

/** The cautions that bear on a check or a job, where it stands: hard ones open, soft ones folded with their count. */
export function CautionsAt({ cautions }: { cautions: readonly RaisedCaution[] }) {
  const hard = cautions.filter(({ kind }) => kind === "hard");
  const soft = cautions.filter(({ kind }) => kind === "soft");
  return (
    <>
      {hard.length > 0 && (
        <div class="warnings">
          {hard.map((caution) => (
            <Told key={caution.id} caution={caution} />
          ))}
        </div>
      )}
      {soft.length > 0 && (
        <details>
          <summary>Bear in mind ({soft.length})</summary>
          <div class="warnings">
            {soft.map((caution) => (
              <Told key={caution.id} caution={caution} />
            ))}
          </div>
        </details>
      )}
    </>
  );
}

function Told({ caution: { kind, title, text } }: { caution: RaisedCaution }) {
  return (
    <Warning kind={kind === "hard" ? "stop" : "mind"}>
      <b>{sentence(title)}</b> {text}
    </Warning>
  );
}

/** Those of an answer's cautions that bear on a check. */
export function onCheck(cautions: readonly RaisedCaution[], check: string): readonly RaisedCaution[] {
  return cautions.filter(({ bears }) => bears.checks.includes(check));
}

/** Those that bear on a job. */
export function onJob(cautions: readonly RaisedCaution[], operation: string): readonly RaisedCaution[] {
  return cautions.filter(({ bears }) => bears.operations.includes(operation));
}
