import type { Check } from "../inspection/check.ts";
import type { UnseenCheck } from "../inspection/finding.ts";
import type { Probability } from "../quantity.ts";
import type { Ledger } from "./ledger.ts";
import type { Moments } from "./moments.ts";
import type { Resource } from "./resource.ts";
import { type AllowanceStakes, consequence } from "./unseenConsequence.ts";
import type { WorkPlan } from "./workPlan.ts";

/** Expected work on what was not looked at, beyond a plan, and the chance that it ends the job. */
export interface Allowance {
  readonly money: Moments;
  /** At speed 1. */
  readonly minutes: Moments;
  /** Chance that an unseen fault leaves only parts. */
  readonly condemned: Probability;
  /** Chance that an unseen fault costs so much that the course is changed. */
  readonly changed: Probability;
}

/**
 * Expected cost of the unseen beyond a plan. Each level of each unseen check brings its cheapest cure at the user's goal, or, where that is
 * cheaper and allowed, a lower price; a level milder than an assumed one spares what only the assumed cure needed. Checks are independent here, and
 * work that several unseen faults would share is paid once: a resource is used with chance 1 - product of (1 - chance of each fault that asks for it), so
 * the expectation of the union is the sum of cost x that chance. Levels that end the job, or that nothing cures on this bike, add to the chance of being
 * condemned; those whose cure costs more than changing the course add to the chance of a change. Only what must be done is counted: optional work on
 * an unseen fault is not.
 */
export function allowanceFor(
  plan: WorkPlan,
  unseen: readonly UnseenCheck[],
  checks: ReadonlyMap<string, Check>,
  ledger: Ledger,
  stakes: AllowanceStakes,
): Allowance {
  const unused = new Map<number, number>();
  let sound = 1;
  let ends = 0;
  let changes = 0;
  const total: Total = { money: { mean: 0, variance: 0 }, minutes: { mean: 0, variance: 0 } };

  for (const { check: id, probabilities, acquittedBy, position } of unseen) {
    const check = checks.get(id)!;
    if (acquittedBy !== null || isPaper(check)) continue;
    const assumed = ledger.bench.faults.find((fault) => fault.assumed && fault.check.id === id);
    let asked: Map<number, number> | null = null;
    let lost = 0;
    let changed = 0;
    for (let rank = 0; rank < probabilities.length; rank++) {
      const chance = probabilities[rank]!;
      const level = consequence(check, rank, position, assumed, plan, ledger, stakes);
      if (level.kind === "condemned") lost += chance;
      if (level.kind === "changed") changed += chance;
      if (level.kind === "told") addTo(total.money, chance, level.loss);
      if (level.kind === "spared")
        for (const index of level.resources) addWork(total, ledger.resources[index]!, -chance);
      if (level.kind === "work") {
        lost += chance * level.endsFrame;
        asked ??= new Map();
        for (const index of level.resources) asked.set(index, (asked.get(index) ?? 0) + chance);
      }
    }
    if (asked)
      for (const [index, chance] of asked) unused.set(index, (unused.get(index) ?? 1) * (1 - chance));
    sound *= 1 - lost - changed;
    ends += lost;
    changes += changed;
  }
  for (const [index, none] of unused) addWork(total, ledger.resources[index]!, 1 - none);
  const share = ends + changes > 0 ? (1 - sound) / (ends + changes) : 0;
  return { ...total, condemned: ends * share, changed: changes * share };
}

/** Sums that grow in place: this runs some hundred times in an appraisal. */
interface Total {
  readonly money: Running;
  readonly minutes: Running;
}

type Running = { -readonly [Key in keyof Moments]: number };

/** Adds what a resource costs where it is used with a chance; a chance below 0 is what is spared. */
function addWork({ money, minutes }: Total, resource: Resource, chance: number): void {
  addTo(money, chance, resource.money.mean + resource.contingency.money.mean);
  addTo(minutes, chance, resource.minutes.mean + resource.contingency.minutes.mean);
}

function addTo(sum: Running, chance: number, amount: number): void {
  sum.mean += chance * amount;
  sum.variance += Math.abs(chance) * (1 - Math.abs(chance)) * amount ** 2;
}

/** Papers are asked for, not repaired: they are owed. */
export function isPaper(check: Check): boolean {
  return check.group === "paperwork" && check.id !== "equipment";
}
