import type { Outcome } from "../../worker/engine/decision/outcome.ts";
import type { PlayedCourse } from "../engine/walker/finds.ts";
import { engineDistribution } from "./engineDistribution.ts";
import { measure } from "./measure.ts";
import { type CourseModel, courseModel } from "./monteCarlo/courseModel.ts";
import { drawCourse } from "./monteCarlo/drawCourse.ts";
import { errorsOf, FIGURES, type Figures, figuresOf, placesOf, sdOf } from "./monteCarlo/figures.ts";
import { selectPlaces } from "./monteCarlo/quickselect.ts";

/** Draws of a run of Monte Carlo whose error is measured, over so many seeds; and four times as many, to see how it falls. */
const DRAWS = 20_000;
const SEEDS = 32;
const MORE = 4;
/** Runs of the engine before it is timed. */
const WARM_UP = 200;
const EFFORT = { rounds: 7, roundMilliseconds: 8 };
/** A difference less than so many standard errors of the reference is not told from 0. */
const RESOLVED = 2;

/** One course by the engine and by Monte Carlo. */
export interface EqualError {
  readonly name: string;
  readonly engineMicroseconds: number;
  /** Worst error of the engine, and of which figure; the least that can be told where it is not resolved. */
  readonly error: number;
  readonly figure: string;
  readonly resolved: boolean;
  /** Standard error of the reference, of its worst figure. */
  readonly referenceError: number;
  /** Error of Monte Carlo with four times the draws, over that with the draws. */
  readonly falling: number;
  /** Draws with which Monte Carlo errs as far as the engine. */
  readonly draws: number;
  /** Its time for them, the margin alone, over the engine's; and with hours and rate, which the engine works out as well. */
  readonly ratio: number;
  readonly ratioWithHours: number;
  readonly milliseconds: number;
}

/**
 * @param reference filled with draws of the reference: as many as it holds
 * @param place of the course among those measured: each has seeds of its own
 */
export async function equalError(
  { name, find: { situation }, course }: PlayedCourse,
  reference: Float64Array,
  place: number,
): Promise<EqualError> {
  const engine = engineDistribution(situation, course, course.unknown!);
  const model = courseModel(situation, course, course.unknown!);
  drawCourse(model, 20_261_126 + place, reference);
  const sd = sdOf(reference, reference.reduce((sum, one) => sum + one, 0) / reference.length);
  const truth = figuresOf(reference);
  const off = errorsOf(told(engine()), truth, sd);
  const figure = FIGURES.reduce((worst, one) => (Math.abs(off[one]) > Math.abs(off[worst]) ? one : worst));
  const few = rootMeanSquare(model, DRAWS, truth, sd, place);
  const more = rootMeanSquare(model, MORE * DRAWS, truth, sd, place);
  const referenceError = few * Math.sqrt(DRAWS / reference.length);
  const least = RESOLVED * referenceError;
  const resolved = Math.abs(off[figure]) >= least;
  const error = Math.max(Math.abs(off[figure]), least);
  const draws = DRAWS * (few / error) ** 2;
  for (let run = 0; run < WARM_UP; run++) engine();
  const margins = new Float64Array(DRAWS);
  const hours = new Float64Array(DRAWS);
  const rates = new Float64Array(DRAWS);
  const [ours, alone, withHours] = await measure(
    [
      { name: "engine", run: engine },
      { name: "Monte Carlo, margin alone", run: () => drawnMargin(model, 1, margins) },
      { name: "Monte Carlo, margin, hours, rate", run: () => drawnAll(model, 1, margins, hours, rates) },
    ],
    EFFORT,
  );
  const times = draws / DRAWS;
  return {
    name,
    engineMicroseconds: ours!.median,
    error,
    figure,
    resolved,
    referenceError,
    falling: more / few,
    draws,
    ratio: (times * alone!.median) / ours!.median,
    ratioWithHours: (times * withHours!.median) / ours!.median,
    milliseconds: (times * alone!.median) / 1000,
  };
}

function told({ margin, lossProbability }: Outcome): Figures {
  return { mean: margin.mean, p10: margin.p10, p90: margin.p90, loss: lossProbability };
}

/** The worst figure's error over the seeds. */
function rootMeanSquare(
  model: CourseModel,
  draws: number,
  truth: Figures,
  sd: number,
  place: number,
): number {
  const margins = new Float64Array(draws);
  const squares = { mean: 0, p10: 0, p90: 0, loss: 0 };
  for (let seed = 0; seed < SEEDS; seed++) {
    const errors = errorsOf(drawnMargin(model, place * SEEDS + seed, margins), truth, sd);
    for (const one of FIGURES) squares[one] += errors[one] ** 2 / SEEDS;
  }
  return Math.sqrt(Math.max(...Object.values(squares)));
}

function drawnMargin(model: CourseModel, seed: number, margins: Float64Array): Figures {
  drawCourse(model, seed, margins);
  return figuresOf(margins);
}

/** What the engine tells of hours and rate too: their quantiles, and how often the rate stays below the goal. */
function drawnAll(
  model: CourseModel,
  seed: number,
  margins: Float64Array,
  hours: Float64Array,
  rates: Float64Array,
): unknown {
  drawCourse(model, seed, margins, hours);
  let below = 0;
  let worked = 0;
  for (let i = 0; i < margins.length; i++) {
    worked += hours[i]!;
    rates[i] = margins[i]! / hours[i]!;
    if (rates[i]! < model.hourlyGoal) below++;
  }
  selectPlaces(hours, placesOf(hours.length, [0.1, 0.5, 0.9]));
  selectPlaces(rates, placesOf(rates.length, [0.1, 0.9]));
  return [figuresOf(margins), worked, below];
}
