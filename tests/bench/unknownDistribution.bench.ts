import { playedCourses } from "../engine/walker/finds.ts";
import type { FloorBench } from "./bench.ts";
import { type EqualError, equalError } from "./equalError.ts";
import { median } from "./measure.ts";

const FLOOR = 50;
const GOAL = 500;
/** Draws that stand for the truth. */
const REFERENCE = 20_000_000;
/** An error beyond this is told by name. */
const INEXACT = 0.005;

export default {
  title:
    "the distribution of a rideable course from its weighed uncertainties, beside a plain Monte Carlo of the same model at equal error",
  run: async (print) => {
    print(
      `error: the worst of mean, 10 % and 90 % point (in standard deviations of the margin) and chance of a loss, against ${REFERENCE.toLocaleString("en")} draws;`,
    );
    print(
      "of Monte Carlo the root mean square over 32 seeds of 20,000 draws, carried to the engine's error by one over the root of the draws;",
    );
    print(
      "its time: drawing the margin alone and picking its quantiles, tables ready; the engine's time holds hours and rate as well",
    );
    const reference = new Float64Array(REFERENCE);
    const all: EqualError[] = [];
    for (const one of playedCourses()) {
      if (!one.course.unknown) continue;
      const result = await equalError(one, reference, all.length);
      all.push(result);
      print(line(result));
    }
    const ratios = all.map(({ ratio }) => ratio);
    const ratio = median(ratios);
    const withHours = all.map(({ ratioWithHours }) => ratioWithHours);
    print(
      `${all.length} courses: engine ${median(all.map((one) => one.engineMicroseconds)).toFixed(0)} µs, its error ${median(all.map(({ error }) => error)).toFixed(4)}; Monte Carlo needs ${Math.round(median(all.map(({ draws }) => draws))).toLocaleString("en")} draws (medians)`,
    );
    print(
      `Monte Carlo takes x ${ratio.toFixed(0)} as long at equal error (median; x ${Math.min(...ratios).toFixed(1)} to ${Math.max(...ratios).toFixed(0)}): ${verdict(ratio, FLOOR)} the floor of ${FLOOR}, ${verdict(ratio, GOAL)} the goal of ${GOAL}; with hours and rate drawn too x ${median(withHours).toFixed(0)}`,
    );
    const bounds = all.filter(({ resolved }) => !resolved).length;
    if (bounds > 0)
      print(
        `of ${bounds} courses the engine's error is not told from 0: twice the reference's own stands for it, so that their draws and ratios are at least those`,
      );
    const falling = all.map((one) => one.falling);
    print(
      `four times the draws: x ${median(falling).toFixed(2)} the error (${Math.min(...falling).toFixed(2)} to ${Math.max(...falling).toFixed(2)}; 0.50 expected); the reference's own error ${median(all.map((one) => one.referenceError)).toFixed(5)} (at most ${Math.max(...all.map((one) => one.referenceError)).toFixed(5)})`,
    );
    const inexact = all.filter(({ error }) => error > INEXACT);
    print(
      inexact.length === 0
        ? `no error beyond ${INEXACT}`
        : `beyond ${INEXACT}: ${inexact.map(({ name, figure, error }) => `${name} (${figure} ${error.toFixed(4)})`).join(", ")}`,
    );
    return ratio >= FLOOR;
  },
} satisfies FloorBench;

function line({ name, engineMicroseconds, error, figure, resolved, draws, milliseconds, ratio }: EqualError) {
  const bound = resolved ? " " : "<";
  const least = resolved ? "" : "at least ";
  return `  ${name.padEnd(30)} ${engineMicroseconds.toFixed(0).padStart(5)} µs, error ${bound}${error.toFixed(4)} (${resolved ? figure : "not told from 0"}); ${Math.round(draws).toLocaleString("en").padStart(9)} draws, ${milliseconds.toFixed(2).padStart(7)} ms: ${least}x ${ratio.toFixed(1)}`;
}

function verdict(ratio: number, least: number): string {
  return ratio >= least ? "above" : "below";
}
