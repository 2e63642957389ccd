import type { Probability } from "../quantity.ts";
import type { Fault } from "./fault.ts";
import type { Ledger } from "./ledger.ts";
import { type Moments, sumOver } from "./moments.ts";
import type { CourseId, Operation, Step } from "./operation.ts";
import { planCosts, usedOf } from "./planCosts.ts";
import type { Resource } from "./resource.ts";
import { mergePurchases, type Purchase } from "./stock.ts";
import type { OpenEnd } from "./stopLimit.ts";
import type { Task } from "./task.ts";

/** An operation of a plan, front and rear taken together. */
export interface PlannedTask {
  readonly operation: Operation;
  readonly name: string;
  readonly position: "bike" | "front" | "rear" | "both";
  readonly minutes: Moments;
  readonly purchases: readonly Purchase[];
  readonly openEnd: OpenEnd | null;
  /** The faults it helps to cure; empty for work that belongs to the course. */
  readonly because: readonly Fault[];
}

/** A cost of the plan that belongs to no operation. */
export interface PlanExtra {
  readonly kind: "tool" | "delivery";
  readonly name: string;
  readonly unit: string;
  readonly money: Moments;
}

/** The work of one course: what is done in which order, what it takes and what it costs. */
export interface WorkPlan {
  readonly course: CourseId;
  readonly tasks: readonly PlannedTask[];
  readonly steps: readonly { readonly step: Step; readonly minutes: Moments }[];
  /** Tools to be had and deliveries. */
  readonly extras: readonly PlanExtra[];
  readonly resources: ReadonlySet<number>;
  readonly cured: readonly Fault[];
  /** Left and told to the buyer. */
  readonly disclosed: readonly Fault[];
  /** Sum of the conditions' penalties that the plan takes away. */
  readonly gain: number;
  readonly polishes: boolean;
  readonly repaints: boolean;
  /** Parts at hand count what they would be worth unused. */
  readonly money: Moments;
  /** Money still to be paid: without the parts at hand. */
  readonly cash: Moments;
  /** At speed 1. */
  readonly minutes: Moments;
  /** Chance that the work shows that nothing may be sold. */
  readonly endsTitle: Probability;
}

/** Which faults an operation serves, by operation id. */
export type Reasons = ReadonlyMap<string, readonly Fault[]>;

export interface PlanParts {
  readonly course: CourseId;
  readonly resources: ReadonlySet<number>;
  readonly reasons: Reasons;
  readonly cured: readonly Fault[];
  readonly disclosed: readonly Fault[];
  readonly gain: number;
  readonly repaints: boolean;
}

/**
 * Adds up a set of resources into a plan: each task, step, tool and the deliveries once; tasks in working order. Money and minutes are
 * independent sums (PERT means and variances; Malcolm et al. 1959).
 */
export function buildWorkPlan(ledger: Ledger, parts: PlanParts): WorkPlan {
  const { done, index } = ledger.bench;
  const merged = mergePlaces(usedOf(parts.resources, ledger), parts.reasons);
  const ordered = merged.sort((a, b) => index.place.get(a.operation.id)! - index.place.get(b.operation.id)!);
  const { tasks, resources, money, cash } = planCosts(ordered, parts.resources, ledger);
  const used = usedOf(resources, ledger);
  return {
    course: parts.course,
    tasks,
    steps: used.flatMap(({ step, minutes }) => (step ? [{ step, minutes }] : [])),
    extras: used.flatMap(extraOf),
    resources,
    cured: parts.cured,
    disclosed: parts.disclosed,
    gain: parts.gain,
    polishes:
      tasks.some(({ operation }) => operation.effect.polishes) ||
      index.polishing.some(({ id }) => done.has(id)),
    repaints: parts.repaints,
    money,
    cash,
    minutes: sumOver(used, ({ minutes }) => minutes),
    endsTitle: anyOf(used.map(({ endsTitle }) => endsTitle)),
  };
}

function extraOf({ kind, tool, money }: Resource): PlanExtra[] {
  if (tool)
    return [{ kind: "tool", name: tool.name, unit: tool.borrow < tool.buy ? "borrowed" : "bought", money }];
  return kind === "orders" && money.mean > 0
    ? [{ kind: "delivery", name: "Delivery", unit: "all orders", money }]
    : [];
}

/** Chance that at least one of independent events happens. */
function anyOf(chances: readonly Probability[]): Probability {
  return 1 - chances.reduce((none, chance) => none * (1 - chance), 1);
}

function mergePlaces(used: readonly Resource[], reasons: Reasons): PlannedTask[] {
  const byOperation = new Map<Operation, Task[]>();
  for (const { task } of used) {
    if (task === null) continue;
    const same = byOperation.get(task.operation);
    if (same) same.push(task);
    else byOperation.set(task.operation, [task]);
  }
  const merged: PlannedTask[] = [];
  for (const [operation, same] of byOperation) merged.push(planned(operation, same, reasons));
  return merged;
}

function planned(operation: Operation, same: readonly Task[], reasons: Reasons): PlannedTask {
  const { name, place, minutes, purchases, openEnd } = same[0]!;
  const alone = same.length === 1;
  return {
    operation,
    name,
    position: alone ? place : "both",
    minutes: alone ? minutes : sumOver(same, (task) => task.minutes),
    purchases: mergePurchases(alone ? purchases : same.flatMap((task) => task.purchases)),
    openEnd,
    because: reasons.get(operation.id) ?? NO_FAULTS,
  };
}

const NO_FAULTS: readonly Fault[] = [];
