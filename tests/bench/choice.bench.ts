import { chooseInGroups } from "../../worker/engine/optimization/chooseInGroups.ts";
import type { MultipleChoiceProblem } from "../../worker/engine/optimization/multipleChoice.ts";
import { compareFinds } from "../../worker/engine/portfolio/compareFinds.ts";
import { NODES } from "../../worker/engine/portfolio/selectSet.ts";
import { BOOK } from "../engine/decision/shippedBook.ts";
import { asProgram, byHighs } from "../engine/optimization/mixedInteger.ts";
import { type Likeness, seededChoice } from "../engine/optimization/seededChoice.ts";
import { shedOf } from "../engine/portfolio/shed.ts";
import type { FloorBench } from "./bench.ts";
import { median } from "./measure.ts";

type Print = (line: string) => void;

/** Where a search is ended. */
const NODE_LIMIT = 100_000;
const LIKENESSES: readonly Likeness[] = ["loose", "close"];

/** HiGHS needs seconds where courses are much alike: fewer of those. */
const RIVAL = { groups: 60, instances: { loose: 12, close: 6 }, seconds: 15, floor: 20, goal: 100 };
/** Ours is so short that one run alone would measure what else the machine does: the median of so many. */
const RUNS = 5;
const WARM_UP = 40;
const LARGE = { groups: 200, instances: 40, floorSeconds: 0.5, goalSeconds: 0.1 };
const GROWTH = { groups: [10, 20, 50, 100, 150, 200], instances: 15 };
const WHOLE = { finds: [2, 4, 8, 20, 60, 200], runs: 7 };
const CHART_WIDTH = 50;

function drawn(groups: number, instances: number, likeness: Likeness): readonly MultipleChoiceProblem[] {
  return Array.from({ length: instances }, (_, seed) => seededChoice(1001 + seed, groups, likeness));
}

function timed<Result>(work: () => Result): { readonly result: Result; readonly milliseconds: number } {
  const start = performance.now();
  const result = work();
  return { result, milliseconds: performance.now() - start };
}

function solve(problem: MultipleChoiceProblem, nodeLimit = NODE_LIMIT) {
  return timed(() => chooseInGroups(problem, { nodeLimit })!);
}

/** The value below which a share of them lies. */
function quantile(values: readonly number[], share: number): number {
  return values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(share * values.length))]!;
}

/** Ours and HiGHS one after the other on each bench; a run of HiGHS that its time limit ended counts as that long. */
function besideHighs(print: Print, likeness: Likeness): boolean {
  const { groups, instances, seconds, floor, goal } = RIVAL;
  const [ours, theirs]: [number[], number[]] = [[], []];
  let [ended, apart] = [0, 0];
  for (const problem of drawn(groups, instances[likeness], likeness)) {
    const program = asProgram(problem);
    const runs = Array.from({ length: RUNS }, () => solve(problem));
    const one = {
      result: runs[0]!.result,
      milliseconds: median(runs.map(({ milliseconds }) => milliseconds)),
    };
    const other = timed(() => byHighs(program, seconds));
    ours.push(one.milliseconds);
    theirs.push(other.milliseconds);
    if (!other.result.proven) ended += 1;
    else if (Math.abs(other.result.value - one.result.value) > 1e-5) apart += 1;
  }
  const ratios = theirs.map((time, at) => time / ours[at]!);
  const ratio = median(ratios);
  print(
    `${groups} finds, ${likeness}, ${ours.length} benches: ${median(ours).toFixed(2)} ms, HiGHS ${median(theirs).toFixed(0)} ms (medians); HiGHS takes ${ratio.toFixed(0)} times as long (median; ${Math.min(...ratios).toFixed(0)} to ${Math.max(...ratios).toFixed(0)}; floor ${floor}, goal ${goal})`,
  );
  print(
    `  ${ended} of its runs were ended after ${seconds} s and count as that long; totals differ in ${apart}`,
  );
  return ratio >= floor && apart === 0;
}

/** As the service asks: with its limit of nodes. Beyond it, how many more would have been proven. */
function large(print: Print): boolean {
  const { groups, instances, floorSeconds, goalSeconds } = LARGE;
  return LIKENESSES.map((likeness) => {
    const problems = drawn(groups, instances, likeness);
    const runs = problems.map((problem) => solve(problem, NODES.set));
    const times = runs.map(({ milliseconds }) => milliseconds);
    const proven = runs.filter(({ result }) => result.proven).length;
    const gaps = runs.map(({ result }) => (result.bound - result.value) / result.value);
    const slow = quantile(times, 0.9);
    print(
      `${groups} finds, ${likeness}, ${instances} benches, at most ${NODES.set} nodes: p50 ${median(times).toFixed(1)} ms, p90 ${slow.toFixed(1)} ms, worst ${Math.max(...times).toFixed(1)} ms (floor of the p90 ${1000 * floorSeconds} ms, goal ${1000 * goalSeconds} ms)`,
    );
    const longer = runs.map(({ result }, at) => result.proven || solve(problems[at]!).result.proven);
    print(
      `  ${proven} proven best, the others to ${(100 * Math.max(...gaps)).toFixed(3)} % of the total or less; within ${NODE_LIMIT} nodes ${longer.filter(Boolean).length}`,
    );
    return slow < 1000 * floorSeconds;
  }).every(Boolean);
}

/** The whole answer for several finds, as the service works it out: the worked cases, over and over, at other prices. */
function whole(print: Print): void {
  for (const count of WHOLE.finds) {
    const finds = shedOf(count);
    const budgets = { hours: count * 1.5, cash: count * 15, slots: Math.ceil(count / 3) };
    const asked = { currency: "EUR", finds, budgets, objective: "netBenefit" } as const;
    const runs = Array.from({ length: WHOLE.runs }, () => timed(() => compareFinds(asked, BOOK)));
    const { proven, chosen } = runs[0]!.result;
    print(
      `the whole answer for ${String(count).padStart(3)} finds: ${median(runs.map(({ milliseconds }) => milliseconds)).toFixed(1)} ms (median of ${WHOLE.runs}); ${chosen.length} chosen, ${proven ? "proven best" : "not proven"}`,
    );
  }
}

/** Median times by size, a bar each. */
function growth(print: Print): void {
  print(
    `growth with the number of finds, median of ${GROWTH.instances}, bars on a scale of logarithms from 0.01 ms to 10 s`,
  );
  for (const likeness of LIKENESSES) {
    for (const groups of GROWTH.groups) {
      const times = drawn(groups, GROWTH.instances, likeness).map((problem) => solve(problem).milliseconds);
      const middle = median(times);
      const bar = Math.max(1, Math.round((CHART_WIDTH * (Math.log10(middle) + 2)) / 6));
      print(`  ${likeness} ${String(groups).padStart(4)}  ${"#".repeat(bar)} ${middle.toPrecision(3)} ms`);
    }
  }
}

export default {
  title: "which finds together: finds of four courses or none, under hours, cash and places on the floor",
  run: (print) => {
    for (const problem of drawn(RIVAL.groups, WARM_UP, "loose")) solve(problem);
    const fast = LIKENESSES.map((likeness) => besideHighs(print, likeness)).every(Boolean);
    const bounded = large(print);
    growth(print);
    whole(print);
    return fast && bounded;
  },
} satisfies FloorBench;
