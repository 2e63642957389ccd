import type { Money } from "../quantity.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { logNormalMean, logNormalSd } from "../statistics/logNormal.ts";
import type { Decision } from "./appraisal.ts";
import type { Branch } from "./branch.ts";
import { goalFlips } from "./goalFlips.ts";
import { withHindsight } from "./hindsight.ts";
import type { Pace } from "./pace.ts";
import { benefitOf, type Played, playScenarios } from "./scenarios.ts";
import { type End, type GroupEnds, type InputGroup, type Sensitivity, sensitivityOf } from "./sensitivity.ts";
import type { Situation } from "./situation.ts";
import type { OpenCourse, WeighedCourse } from "./weighedCourse.ts";
import { workTime } from "./workTime.ts";

/** How far a decision may be trusted. */
export interface Trust
  extends Pick<Decision, "confidence" | "perfectInformation" | "goalsAtWhichItFlips" | "courseByGoal"> {
  readonly sensitivity: readonly Sensitivity[];
}

/** What hindsight, another goal, and each group of inputs would make of a decision. */
export function trustIn(chosen: OpenCourse, courses: readonly WeighedCourse[], situation: Situation): Trust {
  const open = courses.filter((course): course is OpenCourse => course.open);
  const played = playScenarios(open, situation);
  const place = open.indexOf(chosen);
  const { confidence, perfectInformation } = withHindsight(played.benefits, place);
  return {
    confidence,
    perfectInformation,
    ...goalFlips(courses, situation),
    sensitivity: chosen.course === "leave" ? [] : sensitivityTo(chosen, place, played, situation),
  };
}

function sensitivityTo(
  { branches, expected, plan, unknown }: OpenCourse,
  place: number,
  played: Played,
  situation: Situation,
): readonly Sensitivity[] {
  const { workshop } = situation.settled;
  // Where nothing of a group can vary, one scenario tells all.
  const one = { ...played, draws: played.draws.slice(0, 1) };
  const unseen = situation.unseen.faults.length > 0;
  const mayFail = [...(unknown?.decided ?? []), ...(unknown?.rest ?? [])].some(({ job }) => job !== null);
  return sensitivityOf({
    branches,
    expected,
    pace: workshop,
    plannedPurchases: plan.money,
    others: [
      endsOf("hiddenFaults", "checks", expected, place, unseen ? played : one, situation),
      endsOf("failingJobs", "jobs", expected, place, mayFail ? played : one, situation),
    ],
    variance: benefitVariance(branches, workshop),
  });
}

/** One group alone drawn, the others as if nothing came of them; its ends are set about the course's own expectation. */
function endsOf(
  group: InputGroup,
  only: "checks" | "jobs",
  expected: OpenCourse["expected"],
  place: number,
  { players, draws }: Played,
  situation: Situation,
): GroupEnds {
  const { speedFactor } = situation.settled.workshop;
  const ends = draws.map((draw): End & { benefit: Money } => {
    const standing = players[place]!(draw, only);
    return {
      input: standing.money,
      margin: standing.takings - standing.money,
      hours: (speedFactor * standing.minutes + standing.otherMinutes) / 60,
      benefit: benefitOf(standing, situation),
    };
  });
  const mean = (of: (end: (typeof ends)[number]) => number) =>
    ends.reduce((sum, end) => sum + of(end), 0) / ends.length;
  const benefit = mean((end) => end.benefit);
  const off = {
    margin: expected.margin - mean((end) => end.margin),
    hours: expected.hours - mean((end) => end.hours),
  };
  const rising = [...ends].sort((a, b) => b.benefit - a.benefit);
  const at = (share: number): End => {
    const { input, margin, hours } = rising[Math.floor(share * (rising.length - 1))]!;
    return { input, margin: margin + off.margin, hours: hours + off.hours };
  };
  return {
    group,
    low: at(0.1),
    high: at(0.9),
    varianceOfExpectation: mean((end) => squared(end.benefit - benefit)),
  };
}

/** Variance of the net benefit over a course's branches: within them that of takings, money out and time, and between their means. */
function benefitVariance(branches: readonly Branch[], pace: Pace): number {
  let chanceSum = 0;
  let mean = 0;
  let square = 0;
  for (const branch of branches) {
    const { chance, price, share, outlay, covariance } = branch;
    const time = workTime(branch, pace);
    const goal = pace.hourlyGoal / 60;
    const within =
      (price ? squared(share * logNormalSd(price)) : 0) +
      outlay.variance +
      (time ? squared(goal * logNormalSd(time)) : 0) +
      2 * goal * pace.speedFactor * covariance;
    const benefit =
      (price ? share * logNormalMean(price) : 0) - outlay.mean - (time ? goal * logNormalMean(time) : 0);
    chanceSum += chance;
    mean += chance * benefit;
    square += chance * (within + squared(benefit));
  }
  return Math.max(0, square / chanceSum - squared(mean / chanceSum));
}
