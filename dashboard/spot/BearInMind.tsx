import { useRef } from "preact/hooks";
import type { Appraisal } from "../api/types.ts";
import { Cautions } from "../signs/Cautions.tsx";
import { bearInMind } from "../words/seen.ts";

/**
 * The cautions that stand: soft ones that the last answer raised are open until the next, the others folded with their count.
 * @param at length of the trail: how many answers were given
 */
export function BearInMind({ appraisal, at }: { appraisal: Appraisal; at: number }) {
  const firstSeen = useRef(new Map<string, number>());
  // Those that the description alone raises are no news.
  const began = useRef(at);
  for (const { id } of appraisal.cautions) {
    if (!firstSeen.current.has(id)) firstSeen.current.set(id, at);
  }
  const isNew = ({ id, kind }: Caution) =>
    kind === "soft" && at > began.current && firstSeen.current.get(id) === at;
  const fresh = appraisal.cautions.filter(isNew);
  const folded = appraisal.cautions.filter((caution) => !isNew(caution));
  const sorted = [...folded].sort((a, b) => Number(b.kind === "hard") - Number(a.kind === "hard"));
  return (
    <div class="mindful">
      <Cautions cautions={fresh} />
      {sorted.length > 0 && (
        <details>
          <summary>{bearInMind(sorted.length)}</summary>
          <Cautions cautions={sorted} />
        </details>
      )}
    </div>
  );
}

type Caution = Appraisal["cautions"][number];
