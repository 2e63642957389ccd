import { Warning } from "../signs/Warning.tsx";
import { holdTo, setTerms } from "../state/set.ts";
import { SET_FREE_ONE, SET_NONE_FITS } from "../words/setTexts.ts";
import { overrunWords } from "../words/togetherOverrun.ts";
import { freeIt, heldTooMany, liftLimits } from "../words/togetherSet.ts";
import { calledAmong } from "./called.ts";
import type { Standing } from "./standing.ts";

/** What the courses held to overrun, and the ways out. */
export function Overruns({ stood: { answer, rows } }: { stood: Standing }) {
  const { overruns, currency } = answer;
  if (overruns.length === 0) return null;
  const held = rows.filter(({ held }) => held !== null && held !== "leave");
  // One find that, set free, mends every budget: the shortest way out.
  const freeing = held.filter(({ find }) => overruns.every((one) => one.freeing.includes(find.id)));
  return (
    <Warning kind="mind">
      <b>{SET_NONE_FITS}</b>
      {overruns.map((overrun) => (
        <p key={overrun.budget}>{overrunWords(overrun, currency)}</p>
      ))}
      {freeing.length === 0 ? (
        <p>{heldTooMany(held.map(({ find }) => calledAmong(find)))}</p>
      ) : (
        <p>{SET_FREE_ONE}</p>
      )}
      <div class="acts">
        {freeing.map(({ find }) => (
          <button key={find.id} type="button" class="btn quiet" onClick={() => holdTo(find.id, null)}>
            {freeIt(calledAmong(find))}
          </button>
        ))}
        <button
          type="button"
          class="btn quiet"
          onClick={() => {
            const terms = setTerms.terms.peek();
            const lifted = overruns.map(({ budget }) => [budget, { ...terms[budget], limited: false }]);
            setTerms.put(Object.fromEntries(lifted));
          }}
        >
          {liftLimits(overruns.length)}
        </button>
      </div>
    </Warning>
  );
}
