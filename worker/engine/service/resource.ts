import type { Probability } from "../quantity.ts";
import type { Bench } from "./bench.ts";
import { failuresOf, type JobFailure } from "./failure.ts";
import type { Moments } from "./moments.ts";
import type { Step } from "./operation.ts";
import type { Tool } from "./part.ts";
import { rangeMoments } from "./partPrice.ts";
import { PLAIN } from "./stepResource.ts";
import type { Task } from "./task.ts";

/**
 * Everything that a plan pays for at most once: a task at its place, a dismantling step, a tool to be had, the second pair of eyes,
 * the deliveries. A plan is a set of resources; sharing is set union.
 */
export interface Resource {
  readonly kind: "task" | "step" | "tool" | "orders";
  readonly money: Moments;
  /** At speed 1. */
  readonly minutes: Moments;
  /** How the operation may fail; null where it cannot. */
  readonly failure: JobFailure | null;
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

/** A task, once for each way to go on where it fails: a plan holds one of them. */
export function taskResources(task: Task, bench: Bench): readonly Resource[] {
  const { money, minutes } = task;
  return failuresOf(task, bench).map(({ failure, contingency, endsFrame, endsTitle }) => ({
    kind: "task",
    money,
    minutes,
    failure,
    contingency,
    endsFrame,
    endsTitle,
    task,
    step: null,
    tool: null,
  }));
}

/** A tool that is not at hand is borrowed or bought, whichever is cheaper. */
export function toolResource(tool: Tool): Resource {
  const money = { mean: Math.min(tool.borrow, tool.buy), variance: 0 };
  return { ...PLAIN, kind: "tool", money, tool };
}

/** Deliveries of a course, paid once a part is ordered. */
export function ordersResource(orders: number, { workshop }: Bench): Resource {
  const one = rangeMoments(workshop.deliveryPerOrder);
  const money = { mean: one.mean * orders, variance: one.variance * orders };
  return { ...PLAIN, kind: "orders", money };
}
