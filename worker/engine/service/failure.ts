import { holds } from "../bicycle.ts";
import type { Minutes, Money, Probability } from "../quantity.ts";
import { type Bench, stands } from "./bench.ts";
import { type Moments, NOTHING, sum, threePointMoments, withChance } from "./moments.ts";
import type { Failure, Operation, OperationId } from "./operation.ts";
import { buildTask, isApplicable, type Place, placesFor, stepsAt, type Task } from "./task.ts";

/** A job that follows a failed one. */
export interface FollowingJob {
  readonly operation: Operation;
  readonly place: Place;
}

/** A job that may fail, and what follows then. */
export interface JobFailure {
  readonly chance: Probability;
  /** The jobs that follow; none where nothing is to be done but for its own further minutes. */
  readonly next: readonly FollowingJob[];
  /** Work that follows where the frame survives it, whatever else is done on the bike. */
  readonly money: Moments;
  readonly minutes: Moments;
  /** Chance that the frame is finished once the job has failed. */
  readonly endsFrame: Probability;
  /** What was spent after the failure where the frame is finished: nothing is bought for it any more. */
  readonly untilEnd: { readonly money: Money; readonly minutes: Minutes };
}

/** What a task that may fail is expected to bring beside itself. */
export interface ExpectedFailure {
  /** Null where it cannot fail, or where all that a failure ends is the right to sell. */
  readonly failure: JobFailure | null;
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
  if (!failure || bench.done.has(task.operation.id) || failureChance(failure, bench) === 0)
    return CANNOT_FAIL;
  const ways = waysOn(task, bench);
  return (ways.length === 0 ? [NO_FOLLOW_UP] : ways).map((way) => failureOf(task, bench, way));
}

/** The ways to go on where a task fails, as far as this bike allows them. */
export function waysOn(task: Task, bench: Bench): readonly FollowUp[] {
  return (task.operation.failure?.thenOneOf ?? []).flatMap((list) => followUp(task, list, bench) ?? []);
}

function failureOf(task: Task, bench: Bench, next: FollowUp): ExpectedFailure {
  const { failure } = task.operation;
  // An adjustment instead of the full job does not carry the full job's risk.
  if (!failure || task.variant?.steps?.length === 0 || bench.done.has(task.operation.id)) return NO_FAILURE;
  // A task for the pair is two tasks of half the work: the failure belongs to the pair.
  const share = task.operation.per === "pair" ? 0.5 : 1;
  const { openEnd } = task;
  const chance = openEnd ? 1 - openEnd.releaseChance : failureChance(failure, bench) * share;
  if (chance === 0) return NO_FAILURE;
  const after = sum(next.minutes, { mean: failure.extraMinutes, variance: 0 });
  const together = lateness(after.mean, openEnd);
  const minutes = { mean: after.mean, variance: after.variance + together };
  const endsFrame = failure.ends === "frame" && failure.thenOneOf.length === 0 ? 1 : next.endsFrame;
  const endsTitle = failure.ends === "title";
  const untilEnd = {
    money: next.untilEnd.money,
    minutes: next.untilEnd.minutes + failure.extraMinutes,
  };
  return {
    failure: endsTitle ? null : { chance, next: next.jobs, money: next.money, minutes, endsFrame, untilEnd },
    contingency: { money: withChance(next.money, chance), minutes: withChance(minutes, chance) },
    endsFrame: chance * endsFrame,
    endsTitle: endsTitle ? chance : 0,
  };
}

/**
 * What is given up has taken all of its time: Cov(min(T, L), follow-up) = P(T > L) (L - E[min(T, L)]) E[follow-up], counted twice in the sum's variance.
 * @param after expected minutes of what follows
 * @returns what it adds to their variance given that it was given up; 0 where the end is not open
 */
export function lateness(after: Minutes, openEnd: Task["openEnd"]): number {
  return openEnd ? 2 * after * (openEnd.limit - openEnd.minutes.mean) : 0;
}

const NO_FAILURE: ExpectedFailure = {
  failure: null,
  contingency: { money: NOTHING, minutes: NOTHING },
  endsFrame: 0,
  endsTitle: 0,
};
const CANNOT_FAIL: readonly ExpectedFailure[] = [NO_FAILURE];

/** Work that follows a failure, and its chance of ending the frame. */
export interface FollowUp {
  readonly jobs: readonly FollowingJob[];
  readonly money: Moments;
  readonly minutes: Moments;
  readonly endsFrame: Probability;
  /** Expected spending by the time that it ends the frame. */
  readonly untilEnd: { readonly money: Money; readonly minutes: Minutes };
}

const NO_FOLLOW_UP: FollowUp = {
  jobs: [],
  money: NOTHING,
  minutes: NOTHING,
  endsFrame: 0,
  untilEnd: { money: 0, minutes: 0 },
};

/** What is already apart for the task that failed need not be taken apart again. */
function followUp(failed: Task, list: readonly OperationId[], bench: Bench): FollowUp | null {
  const apart = new Set(stepsAt(failed, bench));
  let work = NO_FOLLOW_UP;
  let survives = 1;
  const spent = { money: 0, minutes: 0 };
  for (const id of list) {
    const operation: Operation = bench.index.operations.get(id)!;
    if (!isApplicable(operation, bench)) return null;
    // One wheel or one brake fails, not both.
    const place = placesFor(operation, failed.place === "front" ? "front" : "rear")[0]!;
    const task = buildTask(operation, place, bench);
    const second = failureOf(task, bench, NO_FOLLOW_UP);
    const steps = stepsAt(task, bench).filter((step) => !apart.has(step));
    for (const step of steps) apart.add(step);
    const ended = survives * second.endsFrame;
    survives *= 1 - second.endsFrame;
    const money = sum(work.money, task.money, second.contingency.money);
    const minutes = sum(
      work.minutes,
      task.minutes,
      ...steps.map(({ minutes: taken }) => threePointMoments(taken)),
    );
    spent.money += ended * money.mean;
    spent.minutes += ended * minutes.mean;
    work = { ...work, jobs: [...work.jobs, { operation, place }], money, minutes, endsFrame: 1 - survives };
  }
  if (work.endsFrame === 0) return work;
  const untilEnd = { money: spent.money / work.endsFrame, minutes: spent.minutes / work.endsFrame };
  return { ...work, untilEnd };
}
