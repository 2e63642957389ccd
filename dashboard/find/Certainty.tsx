import type { Appraisal } from "../api/types.ts";
import { Explained } from "../parts/Term.tsx";
import { confidenceWords, flipWords, knowingWords } from "../words/certainty.ts";

/** How sure the decision is: in how many ways it is best, what knowing more is worth, and near which goals another course is best. */
export function Certainty({ appraisal, goal }: { appraisal: Appraisal; goal: number }) {
  const { decision, currency } = appraisal;
  const best = confidenceWords(decision);
  const rest = [knowingWords(decision, currency) ?? "", ...flipWords(decision, goal, currency)].filter(
    (sentence) => sentence !== "",
  );
  return (
    <>
      {best !== null && (
        <p class="sure">
          <Explained text={best} words={/ways? it can turn out/} of="confidence" />
        </p>
      )}
      {rest.length > 0 && (
        <p class="small">
          <Explained text={rest.join(" ")} words={/Knowing everything beforehand/} of="knowing-everything" />
        </p>
      )}
    </>
  );
}
