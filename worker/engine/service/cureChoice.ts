import { chooseSlots } from "../optimization/slotChoice.ts";
import type { Money } from "../quantity.ts";
import type { Cure } from "./cure.ts";
import type { CureSlot } from "./cureSlot.ts";
import type { Fault } from "./fault.ts";
import type { Ledger } from "./ledger.ts";
import { type RiskSet, riskSets, risksOf, within } from "./riskSets.ts";
import type { Stakes } from "./stakes.ts";
import { isOpening } from "./workingOrder.ts";

export interface ChosenCure {
  readonly fault: Fault;
  readonly cure: Cure;
}

/** What may be chosen from, what is done in any case, and what it takes away in any case. */
export interface ChoiceProblem {
  /** Each with at least one cure. */
  readonly slots: readonly CureSlot[];
  readonly base: readonly number[];
  /** Penalties that go whatever is chosen. */
  readonly sure: number;
}

/**
 * The cures that leave most: takings less work where the frame survives it, salvage less the opening work where it does not. Exact. Risk multiplies what
 * the other choices leave, and fresh paint changes what every penalty costs, so neither adds up over faults; each set of risks that some choice can bring is
 * allowed in turn, with and without paint, and for each the rest, which does add up, is solved by branch and bound (optimization/slotChoice).
 */
export function chooseCures(problem: ChoiceProblem, ledger: Ledger, stakes: Stakes): readonly ChosenCure[] {
  const worth = new Float64Array(ledger.resources.length);
  for (let index = 0; index < worth.length; index++) worth[index] = costOf(index, ledger);
  const risky = problem.slots.map(({ cures }) => cures.map((cure) => risksOf(cure, problem.base, ledger)));
  const paints = problem.slots.some(({ cures }) => cures.some(({ repaints }) => repaints));
  const sets = riskSets(problem.slots, risky);
  let best: readonly ChosenCure[] = [];
  let most = -Infinity;
  for (const repainted of paints ? [false, true] : [false]) {
    const solved: { readonly allowed: RiskSet; readonly brought: RiskSet }[] = [];
    for (const allowed of sets) {
      // The best under more risks that brings none but these is the best under these.
      if (solved.some((one) => within(allowed, one.allowed) && within(one.brought, allowed))) continue;
      const slots = problem.slots.map((slot, place) => {
        const risks = risky[place]!;
        const cures = slot.cures.filter(
          ({ repaints }, option) =>
            (repainted || !repaints) && risks[option]!.every((risk) => allowed.has(risk)),
        );
        return { fault: slot.fault, cures, mandatory: slot.mandatory };
      });
      const chosen = choose(slots, problem, worth, repainted, stakes);
      if (!chosen) continue;
      solved.push({
        allowed,
        brought: new Set(chosen.flatMap(({ cure }) => risksOf(cure, problem.base, ledger))),
      });
      const left = leftBy(chosen, problem, worth, ledger, stakes);
      if (left > most) {
        most = left;
        best = chosen;
      }
    }
  }
  return best;
}

/** The best cures from those allowed; null where a mandatory fault has none. */
function choose(
  slots: readonly CureSlot[],
  { base, sure }: ChoiceProblem,
  cost: Float64Array,
  repainted: boolean,
  stakes: Stakes,
): readonly ChosenCure[] | null {
  const { takings, largestMarginal } = stakes.sale(repainted);
  const solution = chooseSlots({
    slots: slots.map(({ fault, cures, mandatory }) => ({
      options: cures.map(({ resources }) => resources),
      gain: fault.penalty,
      mandatory,
      largestMarginal: largestMarginal(fault.penalty),
    })),
    cost,
    base,
    value: (gain) => takings(gain + sure),
  });
  if (!solution) return null;
  return slots.flatMap(({ fault, cures }, place) => {
    const option = solution.choice[place]!;
    return option < 0 ? [] : [{ fault, cure: cures[option]! }];
  });
}

/** Resources of a choice and of what is done in any case, each once. */
export function usedBy(chosen: readonly ChosenCure[], base: readonly number[]): ReadonlySet<number> {
  const used = new Set(base);
  for (const { cure } of chosen) for (const index of cure.resources) used.add(index);
  return used;
}

/** Expected takings less work of a choice, at the user's goal. */
function leftBy(
  chosen: readonly ChosenCure[],
  { base, sure }: ChoiceProblem,
  cost: Float64Array,
  ledger: Ledger,
  { sale, salvage }: Stakes,
): Money {
  const gain = chosen.reduce((total, { fault }) => total + fault.penalty, sure);
  let left = sale(chosen.some(({ cure }) => cure.repaints)).takings(gain);
  let opening = 0;
  let survives = 1;
  for (const index of usedBy(chosen, base)) {
    const { task, endsFrame, contingency } = ledger.resources[index]!;
    left -= cost[index]!;
    survives *= 1 - endsFrame;
    if (task && isOpening(task.operation)) opening += cost[index]! - worthOf(contingency, ledger);
  }
  return survives * left + (1 - survives) * (salvage - opening);
}

/** Money and the time's worth at the user's goal, expected follow-up of a failure included. */
function costOf(index: number, ledger: Ledger): Money {
  const resource = ledger.resources[index]!;
  return worthOf(resource, ledger) + worthOf(resource.contingency, ledger);
}

function worthOf(
  { money, minutes }: Pick<Ledger["resources"][number], "money" | "minutes">,
  { bench }: Ledger,
): Money {
  const { hourlyGoal, speedFactor } = bench.workshop;
  return money.mean + (minutes.mean * speedFactor * hourlyGoal) / 60;
}
