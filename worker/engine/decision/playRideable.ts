import type { Minutes, Money } from "../quantity.ts";
import { type GoingOn, goingOn, type Uncertainty, usedWork, type Way } from "../service/uncertainty.ts";
import type { Work } from "./courseBranch.ts";
import type { Leaf } from "./discovery.ts";
import { type Draw, jobDraw } from "./scenarioDraws.ts";
import type { Situation } from "./situation.ts";
import { type Standing, standingAfter } from "./standing.ts";
import type { OpenCourse, Unknown } from "./weighedCourse.ts";

/** Tells where a course stands in a scenario. */
export type Player = (draw: Draw, only?: "checks" | "jobs") => Standing;

/** A way with what it costs beside its resources, and what each of these costs. */
interface Taken extends Way {
  readonly costs: readonly Pick<GoingOn, "money" | "minutes">[];
  readonly besideMoney: Money;
  readonly besideMinutes: Minutes;
}

/** An uncertainty with where its draw is found. */
interface Item {
  readonly ways: readonly Taken[];
  /** Minutes where nothing comes of it. */
  readonly otherwise: Minutes;
  /** Place among the checks not looked at; null for a job. */
  readonly check: number | null;
  readonly job: number;
}

/**
 * Plays a rideable course in a scenario: what was decided on shows one after the other and may change the course, as in its tree; then the rest; work that
 * several faults ask for is done once.
 * @param jobs place of each job's draw, by operation; shared by the courses, so that a job that fails in one fails in the other
 */
export function rideablePlayer(
  situation: Situation,
  course: OpenCourse,
  unknown: Unknown,
  jobs: Map<string, number>,
): Player {
  const { unseen } = situation;
  const { resources } = unknown;
  const places = new Map(unseen.faults.map(({ check }, place) => [check.id, place]));
  const item = (
    { of, job, ways: all, otherwise: none }: Uncertainty,
    costs: readonly Taken["costs"][number][],
  ): Item => {
    const ways = all.map((way) => taken(way, costs));
    const otherwise = none?.mean ?? 0;
    if (job === null) return { ways, otherwise, check: places.get(of)!, job: 0 };
    const known = jobs.get(of) ?? jobs.size;
    jobs.set(of, known);
    return { ways, otherwise, check: null, job: known };
  };
  // What follows a failed cure is counted by its expectation where it is decided on, and as a way of its own elsewhere.
  const expected = resources.map(goingOn);
  const decided = unknown.decided.map((one) => item(one, expected));
  const rest = unknown.rest.map((one) => item(one, resources));
  const stops = new Map<number, { leaf: Leaf; standing: Standing }>();
  for (const leaf of unknown.leaves) {
    const key = leaf.path.ways.reduce(keyAfter, 0);
    stops.set(key, { leaf, standing: standingAt(leaf, situation, course, unknown) });
  }
  const used = new Int32Array(resources.length);
  let round = 0;

  return (draw, only) => {
    round++;
    let key = 0;
    let money = 0;
    let minutes = 0;
    let told: Money = 0;
    const take = (way: Taken): void => {
      told += way.told;
      money += way.besideMoney;
      minutes += way.besideMinutes;
      for (let place = 0; place < way.resources.length; place++) {
        const index = way.resources[place]!;
        if (used[index] === round) continue;
        used[index] = round;
        money += way.costs[place]!.money.mean;
        minutes += way.costs[place]!.minutes.mean;
      }
    };
    for (const one of decided) {
      const place = wayAt(one, draw, only);
      key = keyAfter(key, place);
      const stop = stops.get(key);
      if (stop && stop.leaf.kind !== "on") return stop.standing;
      if (place >= 0) take(one.ways[place]!);
      else minutes += one.otherwise;
    }
    const { leaf, standing } = stops.get(key)!;
    for (const one of rest) {
      const place = wayAt(one, draw, only);
      if (place < 0) continue;
      const way = one.ways[place]!;
      if (way.endsFrame) return endedBy(way, leaf, situation, unknown);
      take(way);
    }
    return {
      takings: standing.takings - told,
      money: standing.money + money,
      minutes: standing.minutes + minutes,
      otherMinutes: standing.otherMinutes,
    };
  };
}

/** A path of ways as one number; -1 stands for nothing. */
function keyAfter(key: number, way: number): number {
  return key * 64 + way + 2;
}

/** The way in which an uncertainty turns out; -1 where nothing comes of it. */
function wayAt({ ways, check, job }: Item, draw: Draw, only?: "checks" | "jobs"): number {
  if (check === null) {
    if (only === "checks") return -1;
    let left = jobDraw(draw.index, job);
    for (let place = 0; place < ways.length; place++) {
      left -= ways[place]!.chances[draw.historyClass]!;
      if (left < 0) return place;
    }
    return -1;
  }
  if (only === "jobs") return -1;
  const rank = draw.ranks[check]!;
  // Ways of one level share its chance: the cure that works, the one that fails, the one that ends the frame.
  let share = 0;
  let last = -1;
  for (let place = 0; place < ways.length; place++) {
    if (ways[place]!.rank !== rank) continue;
    share += ways[place]!.chances[draw.historyClass]!;
    last = place;
  }
  if (last < 0) return -1;
  let left = draw.within[check]! * share;
  for (let place = 0; place < last; place++) {
    if (ways[place]!.rank !== rank) continue;
    left -= ways[place]!.chances[draw.historyClass]!;
    if (left < 0) return place;
  }
  return last;
}

function taken(way: Way, all: readonly Taken["costs"][number][]): Taken {
  const costs = way.resources.map((index) => all[index]!);
  return {
    ...way,
    costs,
    besideMoney: way.money.mean - costs.reduce((sum, { money }) => sum + money.mean, 0),
    besideMinutes: way.minutes.mean - costs.reduce((sum, { minutes }) => sum + minutes.mean, 0),
  };
}

function standingAt(
  { kind, path }: Leaf,
  situation: Situation,
  { plan }: OpenCourse,
  unknown: Unknown,
): Standing {
  const { sale, opening, change } = unknown;
  if (kind === "on") return standingAfter(situation, sale, plan);
  const taken = takenOn(path, unknown);
  if (kind === "ended")
    return standingAfter(situation, situation.salvage.sale, opening, situation.salvage, path.spent, taken);
  return standingAfter(situation, change.sale, opening, change.work, path.spent, taken);
}

function endedBy(way: Way, { path }: Leaf, situation: Situation, unknown: Unknown): Standing {
  const { opening } = unknown;
  const taken = takenOn(path, unknown);
  return standingAfter(situation, situation.salvage.sale, opening, situation.salvage, path.spent, taken, way);
}

/** What was used on the way beside the jobs. */
function takenOn({ opened }: Leaf["path"], { resources }: Unknown): Work {
  const { money, minutes } = usedWork(opened, resources);
  return { money: { mean: money, variance: 0 }, minutes: { mean: minutes, variance: 0 } };
}
