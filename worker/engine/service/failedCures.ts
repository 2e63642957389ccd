import type { Probability } from "../quantity.ts";
import { lateness } from "./failure.ts";
import { type FollowingWork, followingWork } from "./followingWork.ts";
import type { Ledger } from "./ledger.ts";
import { type Moments, NOTHING, sum, withChance } from "./moments.ts";
import type { Resource } from "./resource.ts";
import type { Uncertainty, Way } from "./uncertainty.ts";
import type { WorkPlan } from "./workPlan.ts";

/** A cure as it goes: with these failures and not with those. */
interface Course {
  readonly share: Probability;
  readonly resources: readonly number[];
  /** Beside what the resources cost by themselves. */
  readonly money: Moments;
  readonly minutes: Moments;
}

/** Ways in which one cure may go that are told apart; beyond them a failure is counted by its expectation. */
const MOST = 8;

/**
 * The uncertainty with each failure of a cure's jobs as a way of its own, so that what follows it is a resource like others: two wheels that cannot be trued
 * want one new wheel each, but a wheel that fails for two reasons wants one. A cure that is counted in ways like these costs what its resources cost by
 * themselves.
 */
export function withFailedCures(one: Uncertainty, plan: WorkPlan, ledger: Ledger): Uncertainty {
  if (one.job !== null) return one;
  const ways: Way[] = [];
  for (let place = 0; place < one.ways.length; place++) {
    const way = one.ways[place]!;
    const mayFail = way.resources.some((index) => ledger.resources[index]!.failure !== null);
    if (way.endsFrame || !mayFail) {
      ways.push(way);
      continue;
    }
    const next = one.ways[place + 1];
    const end = next?.endsFrame && next.rank === way.rank ? next : null;
    ways.push(...waysToGo(way, end, plan, ledger));
    if (end) place++;
  }
  return { ...one, ways };
}

/** @param end the way of the same level that ends the frame, if any */
function waysToGo(way: Way, end: Way | null, plan: WorkPlan, ledger: Ledger): readonly Way[] {
  let courses: readonly Course[] = [{ share: 1, resources: way.resources, money: NOTHING, minutes: NOTHING }];
  for (const index of way.resources) {
    const resource = ledger.resources[index]!;
    if (resource.failure === null) continue;
    courses = courses.flatMap((course) => forked(course, resource, courses.length, plan, ledger));
  }
  const shares = courses.reduce((total, { share }) => total + share, 0);
  // A job that always ends the frame leaves no way to go.
  if (shares === 0) return end ? [end] : [];
  const ways = courses.map(({ share, resources, money, minutes }): Way => {
    const own = resources.map((index) => ledger.resources[index]!);
    return {
      ...way,
      chances: way.chances.map((chance) => (chance * share) / shares),
      resources,
      money: sum(money, ...own.map((one) => one.money)),
      minutes: sum(minutes, ...own.map((one) => one.minutes)),
    };
  });
  return end ? [...ways, end] : ways;
}

/** A course with and without one failure; where the frame does not survive it, it is no course. */
function forked(
  course: Course,
  { failure, task }: Resource,
  count: number,
  plan: WorkPlan,
  ledger: Ledger,
): readonly Course[] {
  const { chance, next, money, minutes, endsFrame } = failure!;
  const follows: Pick<FollowingWork, "resources" | "money" | "minutes" | "endsFrame"> =
    next.length === 0 ? { resources: [], money, minutes, endsFrame } : followingWork(next, plan, ledger);
  const late = lateness(follows.minutes.mean, task?.openEnd ?? null);
  const fails = chance * (1 - follows.endsFrame);
  if (fails === 0) return [{ ...course, share: course.share * (1 - chance) }];
  if (count >= MOST) {
    const followed = fails / (1 - chance + fails);
    return [
      {
        ...course,
        share: course.share * (1 - chance + fails),
        money: sum(course.money, withChance(follows.money, followed)),
        minutes: sum(course.minutes, withChance(follows.minutes, followed)),
      },
    ];
  }
  // What the follow-up brings beside its resources: its own failures, by their expectation.
  const own = follows.resources.map((index) => ledger.resources[index]!);
  const besideMoney = follows.money.mean - own.reduce((total, one) => total + one.money.mean, 0);
  const besideMinutes = follows.minutes.mean - own.reduce((total, one) => total + one.minutes.mean, 0);
  const failed: Course = {
    share: course.share * fails,
    resources: [...new Set([...course.resources, ...follows.resources])],
    money: sum(course.money, { mean: besideMoney, variance: 0 }),
    minutes: sum(course.minutes, { mean: besideMinutes, variance: late }),
  };
  return [{ ...course, share: course.share * (1 - chance) }, failed];
}
