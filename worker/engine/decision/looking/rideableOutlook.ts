import type { Check } from "../../inspection/check.ts";
import type { Money } from "../../quantity.ts";
import type { Fault } from "../../service/fault.ts";
import type { Uncertainty } from "../../service/uncertainty.ts";
import type { WorkPlan } from "../../service/workPlan.ts";
import type { OpenCourse, Unknown } from "../weighedCourse.ts";
import { type KnownWay, knownTogether, knownWay, NOTHING_COMES } from "./knownWay.ts";
import { type Rest, restsOf, worthAfter } from "./restWorth.ts";

/** What a rideable course is worth with some checks known, its plan kept: null where a level ends it. */
export type RideableOutlook = (ranks: readonly number[], classes: Float64Array) => Money | null;

/** The course's outlook for checks that become known together. */
export type RideableOutlooks = (checks: readonly Check[]) => RideableOutlook;

/**
 * The worth of a rideable course once checks are known: the weights of the classes moved by it, their own uncertainties replaced by the ways that the
 * levels bring, all else kept. Neither plan nor what is done at other discoveries is chosen anew, so that it says what the engine would say but for what
 * choosing anew would save.
 * @param unknown of the course
 * @param faults that the plan was made for
 */
export function rideableOutlooks(
  { expected, plan }: OpenCourse,
  unknown: Unknown,
  faults: readonly Fault[],
): RideableOutlooks {
  const { decided, rest, stakes } = unknown;
  const { all, without } = restsOf(unknown);
  const now = worthAfter(all, NOTHING_COMES, stakes.classes);
  const clear = 1 - plan.endsTitle;
  const found = new Map<string, Uncertainty>();
  for (const one of [...decided, ...rest]) if (one.job === null) found.set(one.of, one);
  return (checks) => {
    const ways = checks.map((check) => waysOf(check, found.get(check.id), plan, faults, unknown));
    const known = checks.flatMap(({ id }) => found.get(id) ?? []);
    let others: Rest | null = null;
    return (ranks, classes) => {
      const here: KnownWay[] = [];
      for (let at = 0; at < ranks.length; at++) {
        const way = ways[at]![ranks[at]!]!;
        if (way === null) return null;
        here.push(way);
      }
      others ??= known.length === 0 ? all : without(known);
      const then = worthAfter(others, knownTogether(here, stakes), classes);
      return expected.netBenefit + clear * (then - now);
    };
  };
}

/** What each level of a check brings, by rank. */
function waysOf(
  check: Check,
  one: Uncertainty | undefined,
  plan: WorkPlan,
  faults: readonly Fault[],
  unknown: Unknown,
): readonly (KnownWay | null)[] {
  return check.levels.map((_, rank) => {
    const known = one ? knownWay(one, rank, unknown.stakes.minuteWorth) : NOTHING_COMES;
    if (known !== NOTHING_COMES) return known;
    return { ...NOTHING_COMES, cost: leftAsItIs(check, rank, plan, faults, unknown) };
  });
}

/** What a level that asks for no work takes off the price while it stays; less what the plan took off already for a fault that it assumed and left. */
function leftAsItIs(
  { id, levels, perWheel }: Check,
  rank: number,
  { cured }: WorkPlan,
  faults: readonly Fault[],
  { toldLoss }: Unknown,
): Money {
  const assumed = faults.find((fault) => fault.assumed && fault.check.id === id);
  if (assumed && cured.includes(assumed)) return 0;
  const penalty = levels[rank]!.conditionPenalty * (perWheel ? 0.5 : 1) - (assumed?.penalty ?? 0);
  return penalty === 0 ? 0 : toldLoss(penalty);
}
