import type { Check } from "../inspection/check.ts";
import type { UnseenCheck } from "../inspection/finding.ts";
import type { Money, Probability } from "../quantity.ts";
import type { Bench } from "./bench.ts";
import { curesOf } from "./cure.ts";
import { type Fault, needOf } from "./fault.ts";
import type { Ledger, Resource } from "./ledger.ts";
import type { Moments } from "./moments.ts";
import { remediesAt } from "./serviceIndex.ts";
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

/** What an unseen fault is weighed against. */
export interface AllowanceStakes {
  /** What a penalty on visible condition takes off the takings. */
  readonly toldLoss: (penalty: Probability) => Money;
  /** Work worth more than this is not done: the course is changed instead. */
  readonly changeAbove: Money;
}

/** What an unseen level would bring: work, a lower price where it is told to the buyer instead, or the end of the frame. */
type Consequence =
  | { readonly kind: "nothing" }
  | { readonly kind: "condemned" }
  | { readonly kind: "changed" }
  | { readonly kind: "work"; readonly resources: readonly number[]; readonly endsFrame: Probability }
  | { readonly kind: "told"; readonly loss: Money }
  | { readonly kind: "spared"; readonly resources: readonly number[] };

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
  let money = { mean: 0, variance: 0 };
  let minutes = { mean: 0, variance: 0 };
  const add = (resource: Resource, chance: number) => {
    const cost = resource.money.mean + resource.contingency.money.mean;
    const time = resource.minutes.mean + resource.contingency.minutes.mean;
    const spread = Math.abs(chance) * (1 - Math.abs(chance));
    money = { mean: money.mean + chance * cost, variance: money.variance + spread * cost ** 2 };
    minutes = { mean: minutes.mean + chance * time, variance: minutes.variance + spread * time ** 2 };
  };

  for (const { check: id, probabilities, acquittedBy, position } of unseen) {
    const check = checks.get(id)!;
    if (acquittedBy !== null || isPaper(check)) continue;
    const assumed = ledger.bench.faults.find((fault) => fault.assumed && fault.check.id === id);
    const asked = new Map<number, number>();
    let lost = 0;
    let changed = 0;
    probabilities.forEach((chance, rank) => {
      const level = consequence(check, rank, position, assumed, plan, ledger, stakes);
      if (level.kind === "condemned") lost += chance;
      if (level.kind === "changed") changed += chance;
      if (level.kind === "told")
        money = {
          mean: money.mean + chance * level.loss,
          variance: money.variance + chance * (1 - chance) * level.loss ** 2,
        };
      if (level.kind === "spared")
        for (const index of level.resources) add(ledger.resources[index]!, -chance);
      if (level.kind === "work") {
        lost += chance * level.endsFrame;
        for (const index of level.resources) asked.set(index, (asked.get(index) ?? 0) + chance);
      }
    });
    for (const [index, chance] of asked) unused.set(index, (unused.get(index) ?? 1) * (1 - chance));
    sound *= 1 - lost - changed;
    ends += lost;
    changes += changed;
  }
  for (const [index, none] of unused) add(ledger.resources[index]!, 1 - none);
  const share = ends + changes > 0 ? (1 - sound) / (ends + changes) : 0;
  return { money, minutes, condemned: ends * share, changed: changes * share };
}

/** Papers are asked for, not repaired: they are owed. */
export function isPaper(check: Check): boolean {
  return check.group === "paperwork" && check.id !== "equipment";
}

const NOTHING_MORE: Consequence = { kind: "nothing" };

function consequence(
  check: Check,
  rank: number,
  position: "front" | "rear" | undefined,
  assumed: Fault | undefined,
  plan: WorkPlan,
  ledger: Ledger,
  { toldLoss, changeAbove }: AllowanceStakes,
): Consequence {
  const { terminal } = check.levels[rank]!;
  if (terminal === "parts-or-recycle" || terminal === "recycle") return { kind: "condemned" };
  if (assumed && rank === assumed.rank) return NOTHING_MORE;
  if (assumed && rank < assumed.rank && check.ordered) return spared(assumed, plan, ledger);
  if (rank === 0) return NOTHING_MORE;
  const fault = hypothetical(check, rank, position, ledger.bench);
  if (fault.need === "optional") return NOTHING_MORE;
  const cheapest = cheapestBeyond(fault, plan, ledger);
  if (!cheapest) {
    if (fault.mayDisclose) return { kind: "told", loss: toldLoss(fault.penalty) };
    return fault.need === "required" && !isSymptom(fault, ledger) ? { kind: "condemned" } : NOTHING_MORE;
  }
  const loss = fault.mayDisclose ? toldLoss(fault.penalty) : Infinity;
  if (loss < cheapest.worth) return { kind: "told", loss };
  if (cheapest.worth > changeAbove) return { kind: "changed" };
  return { kind: "work", resources: cheapest.resources, endsFrame: cheapest.endsFrame };
}

/** Symptoms cost what their causes cost, and those are counted on their own. */
function isSymptom(fault: Fault, ledger: Ledger): boolean {
  const rows = remediesAt(ledger.bench.index, fault.check.id, fault.level.id);
  return rows.some(({ causes }) => causes.length > 0);
}

function hypothetical(check: Check, rank: number, wheel: "front" | "rear" | undefined, bench: Bench): Fault {
  const level = check.levels[rank]!;
  // The chances are those of the worse wheel, so one wheel has it; the rear one, which is the dearer.
  const position = check.perWheel ? (wheel ?? "rear") : "bike";
  return {
    check,
    position,
    level,
    rank,
    safety: level.safety,
    ...needOf(check, rank, level.safety, bench.rearSprockets),
    penalty: level.conditionPenalty,
    assumed: true,
  };
}

interface Work {
  readonly resources: readonly number[];
  readonly worth: Money;
  readonly endsFrame: Probability;
}

function cheapestBeyond(fault: Fault, plan: WorkPlan, ledger: Ledger): Work | null {
  const { hourlyGoal, speedFactor } = ledger.bench.workshop;
  let best: Work | null = null;
  for (const cure of curesOf(fault, ledger)) {
    const resources = cure.resources.filter((index) => !plan.resources.has(index));
    let worth = 0;
    let survives = 1;
    for (const index of resources) {
      const resource = ledger.resources[index]!;
      const minutes = resource.minutes.mean + resource.contingency.minutes.mean;
      worth +=
        resource.money.mean + resource.contingency.money.mean + (minutes * speedFactor * hourlyGoal) / 60;
      survives *= 1 - resource.endsFrame;
    }
    if (!best || worth < best.worth) best = { resources, worth, endsFrame: 1 - survives };
  }
  return best;
}

/** What is not spent where the assumed fault turns out to be absent: the tasks that serve nothing else. */
function spared(assumed: Fault, plan: WorkPlan, ledger: Ledger): Consequence {
  const own = plan.tasks
    .filter(({ because }) => because.length === 1 && because[0] === assumed)
    .map(({ operation }) => operation.id);
  const resources = [...plan.resources].filter((index) => {
    const { task } = ledger.resources[index]!;
    return task !== null && own.includes(task.operation.id);
  });
  return resources.length > 0 ? { kind: "spared", resources } : NOTHING_MORE;
}
