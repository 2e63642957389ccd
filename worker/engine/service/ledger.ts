import { holds } from "../bicycle.ts";
import type { Probability } from "../quantity.ts";
import type { Bench } from "./bench.ts";
import { failureOf } from "./failure.ts";
import { type Moments, NOTHING } from "./moments.ts";
import type { Operation, Step } from "./operation.ts";
import type { Tool } from "./part.ts";
import { rangeMoments } from "./partPrice.ts";
import { buildTask, type Place, type Task, threePointMoments } from "./task.ts";

/**
 * Everything that a plan pays for at most once: a task at its place, a dismantling step, a tool to be had, the second pair of eyes,
 * the deliveries. A plan is a set of resources; sharing is set union.
 */
export interface Resource {
  readonly kind: "task" | "step" | "tool" | "orders";
  readonly money: Moments;
  /** At speed 1. */
  readonly minutes: Moments;
  /** Expected follow-up where the operation fails. */
  readonly contingency: { readonly money: Moments; readonly minutes: Moments };
  /** Chance that the work ends the frame. */
  readonly endsFrame: Probability;
  /** Chance that the work shows that nothing may be sold. */
  readonly endsTitle: Probability;
  readonly task: Task | null;
  readonly step: Step | null;
  readonly tool: Tool | null;
}

const NO_CONTINGENCY = { money: NOTHING, minutes: NOTHING };
const PLAIN = { contingency: NO_CONTINGENCY, endsFrame: 0, endsTitle: 0, task: null, step: null, tool: null };

/** The resources of one bike, each made when first asked for. Lives for one appraisal. */
export class Ledger {
  readonly bench: Bench;
  readonly resources: Resource[] = [];
  readonly #byKey = new Map<string, number>();
  /** Deliveries are paid once a part is ordered; their count is the course's. */
  readonly #orders: number;

  constructor(bench: Bench, orders: number) {
    this.bench = bench;
    this.#orders = orders;
  }

  /**
   * Resources of one operation at a place: the task, its steps (with all that they imply), tools that are not at hand, the deliveries
   * where it buys a part.
   */
  forOperation(operation: Operation, place: Place): { resources: number[]; steps: readonly Step[] } {
    const { bench } = this;
    const task = this.#once(`task ${operation.id} ${place}`, () => this.#taskResource(operation, place));
    const steps = stepsAt(this.resources[task]!.task!, bench);
    const resources = [task];
    for (const step of steps) resources.push(this.#once(`step ${step.id}`, () => stepResource(step)));
    for (const id of operation.tools) {
      if (bench.workshop.tools === null || bench.workshop.tools.has(id)) continue;
      const tool = bench.index.tools.get(id)!;
      resources.push(this.#once(`tool ${id}`, () => toolResource(tool)));
    }
    const beyondSkill =
      operation.safetyCritical && operation.doneBy === "self" && operation.skill > bench.workshop.skill;
    if (beyondSkill) resources.push(...this.forOperation(bench.index.supervision, "bike").resources);
    const buysPart = this.resources[task]!.task!.purchases.some(({ part }) => part.kind === "part");
    if (buysPart && this.#orders > 0) resources.push(this.#once("orders", () => this.#ordersResource()));
    return { resources, steps };
  }

  #taskResource(operation: Operation, place: Place): Resource {
    const task = buildTask(operation, place, this.bench);
    const failure = failureOf(task, this.bench);
    return { ...PLAIN, kind: "task", money: task.money, minutes: task.minutes, task, ...failure };
  }

  #ordersResource(): Resource {
    const one = rangeMoments(this.bench.workshop.deliveryPerOrder);
    const money = { mean: one.mean * this.#orders, variance: one.variance * this.#orders };
    return { ...PLAIN, kind: "orders", money, minutes: NOTHING };
  }

  #once(key: string, make: () => Resource): number {
    const known = this.#byKey.get(key);
    if (known !== undefined) return known;
    this.resources.push(make());
    this.#byKey.set(key, this.resources.length - 1);
    return this.resources.length - 1;
  }
}

function stepResource(step: Step): Resource {
  return { ...PLAIN, kind: "step", money: NOTHING, minutes: threePointMoments(step.minutes), step };
}

/** A tool that is not at hand is borrowed or bought, whichever is cheaper. */
function toolResource(tool: Tool): Resource {
  const money = { mean: Math.min(tool.borrow, tool.buy), variance: 0 };
  return { ...PLAIN, kind: "tool", money, minutes: NOTHING, tool };
}

/** Steps of a task with all that they imply, of its own wheel only, and only those this bike has. */
export function stepsAt(task: Task, bench: Bench): readonly Step[] {
  const steps = new Set<Step>();
  for (const id of task.variant?.steps ?? task.operation.steps) {
    for (const step of bench.index.closure.get(id)!) {
      const here = task.place === "bike" || step.position === null || step.position === task.place;
      if (here && holds(step.onlyIf, bench.attributes)) steps.add(step);
    }
  }
  return [...steps];
}
