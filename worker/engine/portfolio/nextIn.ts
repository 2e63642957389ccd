import type { MultipleChoiceSolution } from "../optimization/multipleChoice.ts";
import { leftWorth } from "./candidate.ts";
import type { ChosenCourse, Needs, Selection } from "./comparison.ts";
import { isLeft, type Taken } from "./taken.ts";

/**
 * Of the finds left, the one that pays best for what it uses at the budgets' prices in the linear relaxation (the largest reduced worth), with what the
 * budgets lack to take it as well, nothing given up. Null where no find that is left would pay however much there were.
 */
export function nextIn(
  taken: readonly Taken[],
  limits: readonly number[],
  { used, prices }: Pick<MultipleChoiceSolution, "used" | "prices">,
): Selection["nextIn"] {
  let best: (ChosenCourse & { readonly needs: Needs }) | null = null;
  let bestWorth = -Infinity;
  for (const { candidate, option: current } of taken) {
    if (!isLeft(current) || candidate.locked) continue;
    for (const option of candidate.options) {
      const gain = option.value - leftWorth(candidate);
      if (gain <= 0) continue;
      const worth = option.use.reduce((rest, use, budget) => rest - use * prices[budget]!, gain);
      if (worth <= bestWorth) continue;
      bestWorth = worth;
      best = { id: candidate.id, course: option.course.course, needs: needsOf(option.use, used, limits) };
    }
  }
  return best;
}

function needsOf(use: readonly number[], used: readonly number[], limits: readonly number[]): Needs {
  const [hours, cash, slots] = use.map((more, budget) => Math.max(0, used[budget]! + more - limits[budget]!));
  return { hours: hours!, cash: cash!, slots: slots! };
}
