import type { RaisedCaution } from "../api/types.ts";
import { Cautions } from "../signs/Cautions.tsx";
import { bearInMind } from "../words/seen.ts";

/** The cautions that bear on a check or a job, where it stands: hard ones open, soft ones folded with their count. */
export function CautionsAt({ cautions }: { cautions: readonly RaisedCaution[] }) {
  const hard = cautions.filter(({ kind }) => kind === "hard");
  const soft = cautions.filter(({ kind }) => kind === "soft");
  return (
    <>
      <Cautions cautions={hard} atCause />
      {soft.length > 0 && (
        <details>
          <summary>{bearInMind(soft.length)}</summary>
          <Cautions cautions={soft} atCause />
        </details>
      )}
    </>
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
