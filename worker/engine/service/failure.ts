import { holds } from "../bicycle.ts";
import type { Probability } from "../quantity.ts";
import { type Bench, stands } from "./bench.ts";
import { type Moments, NOTHING, sum, withChance } from "./moments.ts";
import type { Failure, Operation, OperationId } from "./operation.ts";
import { buildTask, isApplicable, placesFor, type Task, threePointMoments } from "./task.ts";

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
 * Expected money and minutes of what must follow a failure (the cheapest of the lists at the user's goal), and the chances that it
 * ends the frame or the right to sell. Follow-up work may fail in its turn; beyond that second failure nothing is followed.
 */
export function failureOf(task: Task, bench: Bench, follow = true): ExpectedFailure {
  const { failure } = task.operation;
  // An adjustment instead of the full job does not carry the full job's risk.
  if (!failure || task.variant?.steps?.length === 0) return NO_FAILURE;
  // A task for the pair is two tasks of half the work: the failure belongs to the pair.
  const share = task.operation.per === "pair" ? 0.5 : 1;
  const chance = failureChance(failure, bench) * share;
  if (chance === 0) return NO_FAILURE;
  const next = follow ? cheapestFollowUp(failure.thenOneOf, bench) : NO_FOLLOW_UP;
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
const NO_FOLLOW_UP = { money: NOTHING, minutes: NOTHING, endsFrame: 0 };

function cheapestFollowUp(lists: Failure["thenOneOf"], bench: Bench) {
  let best = NO_FOLLOW_UP;
  let least = Infinity;
  for (const list of lists) {
    const work = followUp(list, bench);
    if (!work) continue;
    const cost =
      work.money.mean + (work.minutes.mean * bench.workshop.speedFactor * bench.workshop.hourlyGoal) / 60;
    if (cost < least) {
      least = cost;
      best = work;
    }
  }
  return best;
}

function followUp(list: readonly OperationId[], bench: Bench) {
  let work = NO_FOLLOW_UP;
  let survives = 1;
  for (const id of list) {
    const operation: Operation = bench.index.operations.get(id)!;
    if (!isApplicable(operation, bench)) return null;
    // One wheel or one brake fails, not both.
    const place = placesFor(operation, "rear")[0]!;
    const task = buildTask(operation, place, bench);
    const second = failureOf(task, bench, false);
    survives *= 1 - second.endsFrame;
    const steps = operation.steps.map((step) => threePointMoments(bench.index.steps.get(step)!.minutes));
    work = {
      money: sum(work.money, task.money, second.contingency.money),
      minutes: sum(work.minutes, task.minutes, ...steps),
      endsFrame: 1 - survives,
    };
  }
  return work;
}
