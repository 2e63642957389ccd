import type { Check } from "../inspection/check.ts";
import type { Money } from "../quantity.ts";
import { squared } from "../statistics/elementary/powers.ts";
import type { LogNormal } from "../statistics/logNormal.ts";
import { partsSale, whenFrameLost, whenFrameSells } from "./partsSale.ts";
import { type Player, rideablePlayer } from "./playRideable.ts";
import type { ScenarioBenefits } from "./scenarioBenefits.ts";
import { type Draw, papersDraw, SCENARIO_COUNT } from "./scenarioDraws.ts";
import { blocks, condemnsFrame, type Situation } from "./situation.ts";
import { type Standing, standingAfter, standingOf } from "./standing.ts";
import type { OpenCourse } from "./weighedCourse.ts";

/** The open courses played through the same scenarios. */
export interface Played {
  readonly benefits: ScenarioBenefits;
  /** Of each course, in the order of the benefits. */
  readonly players: readonly Player[];
  readonly draws: readonly Draw[];
}

/**
 * Plays every open course through the same scenarios: class of history, levels of what was not looked at, jobs that fail, papers. Prices, times and parts stand
 * at their means; the sale price, which all states of a find share, is left open for those who integrate it.
 */
export function playScenarios(courses: readonly OpenCourse[], situation: Situation): Played {
  const jobs = new Map<string, number>();
  const players = courses.map((course) => playerOf(course, situation, jobs));
  const draws = situation.draws();
  const size = courses.length * SCENARIO_COUNT;
  const slopes = new Float64Array(size);
  const offsets = new Float64Array(size);
  for (let s = 0, i = 0; s < SCENARIO_COUNT; s++) {
    for (let course = 0; course < players.length; course++, i++) {
      const standing = players[course]!(draws[s]!);
      slopes[i] = standing.takings;
      offsets[i] = benefitOf(standing, situation) - standing.takings;
    }
  }
  const weights = new Float64Array(SCENARIO_COUNT).fill(1);
  return {
    benefits: { courses: courses.length, slopes, offsets, weights, priceFactor: priceFactor(courses) },
    players,
    draws,
  };
}

/** Net benefit of a standing at the mean price. */
export function benefitOf(
  { takings, money, minutes, otherMinutes }: Standing,
  { settled: { workshop } }: Situation,
): Money {
  return takings - money - ((workshop.speedFactor * minutes + otherMinutes) * workshop.hourlyGoal) / 60;
}

function playerOf(course: OpenCourse, situation: Situation, jobs: Map<string, number>): Player {
  const playWork = workPlayer(course, situation, jobs);
  const { endsTitle } = course.plan;
  if (endsTitle === 0) return playWork;
  const reported = standingOf(course.branches[0]!);
  return (draw, only) => (papersDraw(draw.index) < endsTitle ? reported : playWork(draw, only));
}

function workPlayer(course: OpenCourse, situation: Situation, jobs: Map<string, number>): Player {
  if (course.unknown) return rideablePlayer(situation, course, course.unknown, jobs);
  const [better, worse] = standingsOf(course, situation);
  if (!worse) return () => better!;
  const [kind, certain] =
    course.course === "break-for-parts"
      ? ([condemnsFrame, situation.frameUnsaleableChance === 1] as const)
      : ([blocks, situation.notRidingChance === 1] as const);
  const bad = situation.unseen.faults.map(({ check }) => levelsOf(check, kind));
  return ({ ranks }, only) => {
    if (certain) return worse;
    if (only === "jobs") return better!;
    for (let place = 0; place < bad.length; place++) if (bad[place]![ranks[place]!]) return worse;
    return better!;
  };
}

/** How a course without unknown work stands where nothing is amiss, and where something is: a bike that does not ride, a frame that is lost. */
function standingsOf(course: OpenCourse, situation: Situation): readonly Standing[] {
  const { plan, branches } = course;
  if (course.course !== "break-for-parts")
    return branches.slice(plan.endsTitle === 0 ? 0 : 1).map(standingOf);
  // Its branches are lots of pieces that sell or do not; prices and sales stand at their means.
  const { parts, pricing, frameUnsaleableChance } = situation;
  return [whenFrameSells(parts.list, frameUnsaleableChance), whenFrameLost(parts.list)].map((pieces) =>
    standingAfter(situation, partsSale(pieces, pricing), plan),
  );
}

function levelsOf(check: Check, kind: (check: Check, rank: number) => boolean): readonly boolean[] {
  return check.levels.map((_, rank) => kind(check, rank));
}

/** The price over its mean: log-normal of mean 1, with the spread of the likeliest sale of the most worked course. */
function priceFactor(courses: readonly OpenCourse[]): LogNormal {
  const sold = courses.flatMap(({ branches }) => branches.filter(({ price }) => price !== null));
  const likeliest = sold.reduce<(typeof sold)[number] | null>(
    (best, one) => (best === null || one.chance > best.chance ? one : best),
    null,
  );
  const logSd = likeliest?.price?.logSd ?? 0;
  return { logMedian: -squared(logSd) / 2, logSd };
}
