import { holds } from "../bicycle.ts";
import type { Probability } from "../quantity.ts";
import { type Bench, stands } from "./bench.ts";
import { type Moments, NOTHING, sum, threePointMoments, withChance } from "./moments.ts";
import type { Failure, Operation, OperationId } from "./operation.ts";
import { buildTask, isApplicable, placesFor, stepsAt, type Task } from "./task.ts";

/** What a task that may fail is expected to bring beside itself. */
export interface ExpectedFailure {
  readonly contingency: { readonly money: Moments; readonly minutes: Moments };
  readonly endsFrame: Probability;
  readonly endsTitle: Probability;
}

/** Chance of failure on this bike: the first row that holds. */
export function failureChance(failure: Failure, bench: Bench): Probability {
  const row = failure.chances.find(
    ({ when, at }) =>
      holds(when, bench.attributes) && (at.length === 0 || at.some((match) => stands(bench, match))),
  );
  return row?.probability ?? 0;
}

/**
 * Expected money and minutes of what must follow a failure, and the chances that it ends the frame or the right to sell: one for each of the ways that
 * may follow, in the order of the table. Which of them is best depends on what the frame is worth to the course, so it is the planner's choice. Follow-up
 * work may fail in its turn; beyond that second failure nothing is followed.
 */
export function failuresOf(task: Task, bench: Bench): readonly ExpectedFailure[] {
  const { failure } = task.operation;
  if (!failure || failureChance(failure, bench) === 0) return CANNOT_FAIL;
  if (failure.thenOneOf.length === 0) return [failureOf(task, bench, NO_FOLLOW_UP)];
  const ways = failure.thenOneOf.flatMap((list) => followUp(task, list, bench) ?? []);
  return (ways.length === 0 ? [NO_FOLLOW_UP] : ways).map((way) => failureOf(task, bench, way));
}

function failureOf(task: Task, bench: Bench, next: FollowUp): ExpectedFailure {
  const { failure } = task.operation;
  // An adjustment instead of the full job does not carry the full job's risk.
  if (!failure || task.variant?.steps?.length === 0) return NO_FAILURE;
  // A task for the pair is two tasks of half the work: the failure belongs to the pair.
  const share = task.operation.per === "pair" ? 0.5 : 1;
  const chance = failureChance(failure, bench) * share;
  if (chance === 0) return NO_FAILURE;
  const minutes = sum(next.minutes, { mean: failure.extraMinutes, variance: 0 });
  return {
    contingency: { money: withChance(next.money, chance), minutes: withChance(minutes, chance) },
    endsFrame: failure.ends === "frame" && failure.thenOneOf.length === 0 ? chance : chance * next.endsFrame,
    endsTitle: failure.ends === "title" ? chance : 0,
  };
}

const NO_FAILURE: ExpectedFailure = {
  contingency: { money: NOTHING, minutes: NOTHING },
  endsFrame: 0,
  endsTitle: 0,
};
const CANNOT_FAIL: readonly ExpectedFailure[] = [NO_FAILURE];

/** Work that follows a failure, and its chance of ending the frame. */
interface FollowUp {
  readonly money: Moments;
  readonly minutes: Moments;
  readonly endsFrame: Probability;
}

const NO_FOLLOW_UP: FollowUp = { money: NOTHING, minutes: NOTHING, endsFrame: 0 };

/** What is already apart for the task that failed need not be taken apart again. */
function followUp(failed: Task, list: readonly OperationId[], bench: Bench): FollowUp | null {
  const apart = new Set(stepsAt(failed, bench));
  let work = NO_FOLLOW_UP;
  let survives = 1;
  for (const id of list) {
    const operation: Operation = bench.index.operations.get(id)!;
    if (!isApplicable(operation, bench)) return null;
    // One wheel or one brake fails, not both.
    const place = placesFor(operation, failed.place === "front" ? "front" : "rear")[0]!;
    const task = buildTask(operation, place, bench);
    const second = failureOf(task, bench, NO_FOLLOW_UP);
    survives *= 1 - second.endsFrame;
    const steps = stepsAt(task, bench).filter((step) => !apart.has(step));
    for (const step of steps) apart.add(step);
    work = {
      money: sum(work.money, task.money, second.contingency.money),
      minutes: sum(work.minutes, task.minutes, ...steps.map(({ minutes }) => threePointMoments(minutes))),
      endsFrame: 1 - survives,
    };
  }
  return work;
}
