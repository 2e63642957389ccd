import type { Situation } from "../../../worker/engine/decision/situation.ts";
import { courseWork } from "../../../worker/engine/service/courseWork.ts";
import type { Cure } from "../../../worker/engine/service/cure.ts";
import { cureSlots } from "../../../worker/engine/service/cureSlot.ts";
import type { Ledger } from "../../../worker/engine/service/ledger.ts";
import type { Operation } from "../../../worker/engine/service/operation.ts";
import type { WorkPlan } from "../../../worker/engine/service/workPlan.ts";
import { logNormalMean } from "../../../worker/engine/statistics/logNormal.ts";

/**
 * What the best plan leaves, by trying every combination of cures. Shares with the planner the list of cures for a fault and the prices, and nothing of the
 * search: money is added up here, and the price is asked of the regression each time.
 */
export interface Enumeration {
  /** The most that any combination leaves, in expectation. */
  readonly most: number;
  /** What a frame lost at the first risk leaves; -Infinity where nothing risks it. */
  readonly lost: number;
  /** Faults that may be left. */
  readonly optional: number;
}

type RideableCourse = "restore" | "make-safe";

/** Null where a fault that must go has no cure. */
export function enumeratePlans(
  course: RideableCourse,
  situation: Situation,
  ledger: Ledger,
): Enumeration | null {
  const { causes, symptoms } = ledger.faults();
  const faced = cureSlots(course, causes, ledger);
  if (faced.some(({ mandatory, cures }) => mandatory && cures.length === 0)) return null;
  const { resources: base, slots } = courseWork(course, ledger, faced);
  const open = slots.filter(({ cures }) => cures.length > 0);
  const sure = symptoms.reduce(
    (sum, { penalty }) => sum + penalty,
    course === "restore" ? situation.pricing.notPolished : 0,
  );
  let most = -Infinity;
  const prices = new Map<string, number>();
  const visit = (place: number, chosen: readonly Cure[], gain: number): void => {
    const slot = open[place];
    if (!slot) {
      const resources = new Set([...base, ...chosen.flatMap((cure) => cure.resources)]);
      const repainted = chosen.some(({ repaints }) => repaints);
      most = Math.max(
        most,
        leftBy(course, situation, ledger, { resources, gain, repaints: repainted }, prices),
      );
      return;
    }
    if (!slot.mandatory) visit(place + 1, chosen, gain);
    for (const cure of slot.cures) visit(place + 1, [...chosen, cure], gain + slot.fault.penalty);
  };
  visit(0, [], sure);
  const risky = ledger.resources.some(({ endsFrame }) => endsFrame > 0);
  const lost = risky ? whenLost(situation, ledger, new Set(base)) : -Infinity;
  return { most, lost, optional: open.filter(({ mandatory }) => !mandatory).length };
}

/** How many combinations there are to try. */
export function combinations(course: RideableCourse, ledger: Ledger): number {
  const slots = cureSlots(course, ledger.faults().causes, ledger);
  return slots.reduce(
    (product, { cures, mandatory }) => product * Math.max(1, cures.length + (mandatory ? 0 : 1)),
    1,
  );
}

/**
 * Takings less work, or salvage less the opening work where the frame is lost.
 * @param prices expected prices already asked for, by condition and finish
 */
export function leftBy(
  course: RideableCourse,
  situation: Situation,
  ledger: Ledger,
  { resources, gain, repaints }: Pick<WorkPlan, "resources" | "gain" | "repaints">,
  prices = new Map<string, number>(),
): number {
  const { pricing, settled, unworkedCondition, book } = situation;
  const { hourlyGoal, speedFactor } = settled.workshop;
  const hour = (hourlyGoal * speedFactor) / 60;
  const fixed = settled.fee.fixed + settled.packing;
  const share = (1 - book.catalogue.defaults.haggling.rideable) * (1 - settled.fee.rate);
  const key = `${gain.toFixed(9)} ${repaints}`;
  const finish = { polished: course === "restore", repainted: repaints };
  const price = prices.get(key) ?? logNormalMean(pricing.rideable(unworkedCondition + gain, finish));
  prices.set(key, price);
  let work = 0;
  let survives = 1;
  for (const index of resources) {
    const { money, minutes, contingency, endsFrame } = ledger.resources[index]!;
    work += money.mean + contingency.money.mean + (minutes.mean + contingency.minutes.mean) * hour;
    survives *= 1 - endsFrame;
  }
  const sold = share * price - fixed - work;
  return survives * sold + (1 - survives) * whenLost(situation, ledger, resources);
}

/** Salvage less the work that comes before the frame is known to hold. */
function whenLost({ settled, salvage }: Situation, ledger: Ledger, resources: ReadonlySet<number>): number {
  const hour = (settled.workshop.hourlyGoal * settled.workshop.speedFactor) / 60;
  const opening = [...resources]
    .map((index) => ledger.resources[index]!)
    .filter(({ task }) => task && comesFirst(task.operation))
    .reduce((sum, { money, minutes }) => sum + money.mean + minutes.mean * hour, 0);
  const salvaged = salvage.sale
    ? salvage.sale.share * logNormalMean(salvage.sale.price) - settled.fee.fixed - settled.packing
    : 0;
  return salvaged - salvage.money.mean - salvage.minutes.mean * hour - opening;
}

/** Papers, photographs of the state, a wash, and what may end the job. */
function comesFirst({ selling, effect, failure, alwaysIn }: Operation): boolean {
  if (selling || effect.polishes) return false;
  return failure?.redecide === true || alwaysIn.includes("sell-as-found");
}
