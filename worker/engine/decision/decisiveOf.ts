import type { Money } from "../quantity.ts";
import type { Uncertainty, Way } from "../service/uncertainty.ts";
import { isOpening } from "../service/workingOrder.ts";

/** Uncertainties decided on one by one, beside what comes first; the tree has the product of their ways. */
const MOST = 3;

/**
 * The uncertainties that may change the course: the few whose work may weigh most against what going on is worth over changing. One that could not even
 * with all the others at its side is left to be carried in expectation. Opening work that may end the frame comes before all of them in any case.
 * @param margin worth of going on over changing the course
 * @param minuteWorth of a minute at speed 1
 * @returns in the order in which they show: looks that spare opening work, jobs of the plan, then what shows from outside, then what needs taking apart
 */
export function decisiveOf(
  uncertainties: readonly Uncertainty[],
  margin: Money,
  minuteWorth: Money,
): { readonly decided: readonly Uncertainty[]; readonly rest: readonly Uncertainty[] } {
  const weights = new Map<Uncertainty, Money>();
  for (const one of uncertainties) {
    const weight = heaviest(one, minuteWorth);
    if (weight > 0 && weight * MOST > margin) weights.set(one, weight);
  }
  const chosen = new Set(
    [...weights.keys()].sort((a, b) => weights.get(b)! - weights.get(a)!).slice(0, MOST),
  );
  for (const one of uncertainties) if (mayEndOpening(one)) chosen.add(one);
  const decided = uncertainties.filter((one) => chosen.has(one));
  return {
    decided: decided.sort((a, b) => turnOf(a) - turnOf(b)),
    rest: uncertainties.filter((one) => !chosen.has(one)),
  };
}

function mayEndOpening({ job, ways }: Uncertainty): boolean {
  return job !== null && isOpening(job) && ways.some(({ endsFrame }) => endsFrame);
}

/** What may spare opening work comes first, then jobs of the plan, opening ones before others; then checks, the fewer steps, the sooner. */
function turnOf({ job, opening, ways }: Uncertainty): number {
  if (job === null) return ways.some(sparesOpening) ? -3 : opening.length;
  return isOpening(job) ? -2 : -1;
}

function sparesOpening({ early: { money, minutes } }: Way): boolean {
  return money.mean !== 0 || minutes.mean !== 0;
}

function heaviest({ ways }: Uncertainty, minuteWorth: Money): Money {
  let most = 0;
  for (const { endsFrame, money, minutes } of ways)
    if (!endsFrame) most = Math.max(most, money.mean + minutes.mean * minuteWorth);
  return most;
}
