import { type Outcome, outcomeOf } from "../../../worker/engine/decision/outcome.ts";
import { type PlayedCourse, playedCourses } from "./finds.ts";
import { type Played, playCourse } from "./played.ts";

/** One figure of a course, told by the engine and played by the walker. */
export interface Figure {
  readonly course: string;
  readonly what: string;
  readonly told: number;
  readonly played: number;
  /** Told less played, in standard deviations of the margin or the hours; as it is where the figure is a chance. */
  readonly error: number;
  /** One standard error of what was played, in the same unit. */
  readonly standardError: number;
}

/** All figures, or without those that are told and not promised: sorting hours and rates takes its time. */
export type Wanted = "all" | "promised";

/** Plays every open course of every find that nothing stops and sets the engine's figures beside what came of it. */
export function playAll(bikes: number, seed: number, wanted: Wanted = "all"): readonly Figure[] {
  return playedCourses().flatMap((one, place) => figuresOf(one, bikes, seed + place, wanted));
}

function figuresOf(
  { name, find, course }: PlayedCourse,
  bikes: number,
  seed: number,
  wanted: Wanted,
): readonly Figure[] {
  const outcome = outcomeOf(course.branches, find.settled.workshop);
  const { margins, hours } = playCourse(course, find.situation, bikes, seed);
  const time =
    wanted === "all"
      ? timeFigures(outcome, { margins, hours })
      : [meanFigure("hours", outcome.hours.mean, hours)];
  return [...marginFigures(outcome, margins), ...time].map((figure) => ({ course: name, ...figure }));
}

type Bare = Omit<Figure, "course">;

/** Sorts the margins of a copy. */
function marginFigures({ margin, lossProbability }: Outcome, margins: Float64Array): Bare[] {
  const losses = margins.reduce((count, one) => count + (one < -1e-9 ? 1 : 0), 0) / margins.length;
  const error = Math.sqrt((lossProbability * (1 - lossProbability)) / margins.length);
  return [
    ...spreadFigures("margin", margin, margins),
    {
      what: "loss",
      told: lossProbability,
      played: losses,
      error: lossProbability - losses,
      standardError: error,
    },
  ];
}

function timeFigures({ hours: told, marginPerHour }: Outcome, { margins, hours }: Played): Bare[] {
  const rates = margins.map((margin, place) => margin / hours[place]!);
  const { p10, p90 } = marginPerHour!;
  return [
    ...spreadFigures("hours", told, hours),
    ...quantileFigures(
      "rate",
      [
        [0.1, p10],
        [0.9, p90],
      ],
      rates,
    ),
  ];
}

function spreadFigures(
  what: string,
  told: { readonly mean: number; readonly p10: number; readonly p50: number; readonly p90: number },
  draws: Float64Array,
): Bare[] {
  return [
    meanFigure(what, told.mean, draws),
    ...quantileFigures(
      what,
      [
        [0.1, told.p10],
        [0.5, told.p50],
        [0.9, told.p90],
      ],
      draws,
    ),
  ];
}

function meanFigure(what: string, told: number, draws: Float64Array): Bare {
  const { mean, sd } = momentsOf(draws);
  const standardError = 1 / Math.sqrt(draws.length);
  return { what: `${what} mean`, told, played: mean, error: (told - mean) / sd, standardError };
}

/** How far apart the draws are from which a quantile's own error is read. */
const NEARBY = 0.01;

function quantileFigures(
  what: string,
  told: readonly (readonly [probability: number, value: number])[],
  draws: Float64Array,
): Bare[] {
  const { sd } = momentsOf(draws);
  const sorted = draws.slice().sort();
  const at = (p: number) => sorted[Math.floor(p * sorted.length)]!;
  return told.map(([p, value]) => {
    const sparsity = (at(p + NEARBY) - at(p - NEARBY)) / (2 * NEARBY);
    const standardError = (Math.sqrt((p * (1 - p)) / sorted.length) * sparsity) / sd;
    return {
      what: `${what} ${100 * p} %`,
      told: value,
      played: at(p),
      error: (value - at(p)) / sd,
      standardError,
    };
  });
}

function momentsOf(draws: Float64Array): { mean: number; sd: number } {
  let sum = 0;
  for (const one of draws) sum += one;
  const mean = sum / draws.length;
  let squares = 0;
  for (const one of draws) squares += (one - mean) ** 2;
  return { mean, sd: Math.sqrt(squares / draws.length) };
}

/** Figures of which more is known to be off than the model promises, with the cause: held to a bound of their own, in the unit of the error. */
const OUTSTANDING: readonly {
  readonly course: RegExp;
  /** The figures that are off. */
  readonly what: RegExp;
  readonly because: string;
  readonly within: number;
}[] = [
  {
    course: /^((A5|orange-racer) (restore|make-safe)|A7 restore)$/,
    what: /^hours mean$/,
    because:
      "a job is spared where its assumed fault is absent, and must be done after all where another fault's cure builds on it",
    within: 0.015,
  },
];

/** Why a figure may be off by more than the model promises; null where nothing is known against it. */
export function outstanding(figure: Figure): { readonly because: string; readonly within: number } | null {
  return OUTSTANDING.find(({ course, what }) => course.test(figure.course) && what.test(figure.what)) ?? null;
}

/**
 * What a figure may be off by: means, chances of a loss and quantiles of the margin are promised. Hours' quantiles and rates are told, not promised.
 * @param mean allowed for a mean, in standard deviations
 */
export function allowedError(figure: Figure, mean: number): number | null {
  const { what } = figure;
  if (what.startsWith("rate") || (what.startsWith("hours") && what !== "hours mean")) return null;
  return outstanding(figure)?.within ?? (what.endsWith("mean") ? mean : 0.005);
}
