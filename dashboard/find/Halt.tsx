import type { Appraisal } from "../api/types.ts";
import { Warning } from "../signs/Warning.tsx";
import { FIND_NO_FIGURE } from "../words/findTexts.ts";
import { Reasons } from "./Reasons.tsx";

/** A hard stop comes before money, and then there is none. */
export function Halt({ appraisal }: { appraisal: Pick<Appraisal, "decision" | "currency"> }) {
  return (
    <Warning kind="stop">
      <b>{FIND_NO_FIGURE}</b>
      <Reasons reasons={appraisal.decision.reasons} currency={appraisal.currency} />
    </Warning>
  );
}
