import type { AppraisalBody, Budgets, ComparisonBody, CourseId, Objective } from "../api/types.ts";
import type { Find } from "../finds/find.ts";

/** What is asked about all finds together. */
export interface SetWish {
  readonly hourlyGoal: number;
  readonly budgets: Budgets;
  readonly objective: Objective;
  /** By find: the course it takes in any case. */
  readonly courses: Readonly<Record<string, CourseId>>;
}

export interface SetQuestion {
  readonly body: ComparisonBody;
  /** The finds name different months of sale, so none is sent. */
  readonly monthsDiffer: boolean;
  /** Older prices of the user's own that had to stay out. */
  readonly pricesLeft: number;
}

type Comparable = NonNullable<AppraisalBody["comparables"]>[number];

/** Readings (finds by prices) that the API works out at once. */
const MOST_READINGS = 20_000;

/**
 * The question which finds to take together, from the question of each find. There is one workshop for all, so of theirs it takes what is the
 * workshop's: the goal and the prices of parts. The month of sale is that of a find; it goes along only where all agree, for a wrong month would move
 * every price, and without one the seasons are averaged.
 * @param finds each with its own body; the id of the dashboard becomes the label in the answer
 */
export function setBody(finds: readonly Find[], wish: SetWish): SetQuestion {
  const { hourlyGoal, budgets, objective, courses } = wish;
  const workshops = finds.map(({ body }) => body.workshop);
  const months = new Set(workshops.map((one) => one?.month));
  const [month] = months;
  const partPrices = workshops.find((one) => one?.partPrices !== undefined)?.partPrices;
  const most = Math.floor(MOST_READINGS / Math.max(1, finds.length));
  // Newest first, so that the oldest are left.
  const own = finds.map(({ body }) => (body.comparables ?? []).slice(0, most));
  const common = commonTo(own);
  const pricesLeft = Math.max(0, ...finds.map(({ body }) => (body.comparables?.length ?? 0) - most));
  return {
    monthsDiffer: months.size > 1,
    pricesLeft,
    body: {
      finds: finds.map(({ id, body }, i) => {
        const apart = (own[i] ?? []).filter((one) => !common.has(JSON.stringify(one)));
        return {
          find: { ...body.find, id },
          observations: body.observations ?? {},
          ...(apart.length === 0 ? {} : { comparables: apart }),
          course: courses[id] ?? null,
        };
      }),
      ...(common.size === 0 ? {} : { comparables: [...common.values()] }),
      workshop: {
        hourlyGoal,
        ...(months.size === 1 && month !== undefined ? { month } : {}),
        ...(partPrices === undefined ? {} : { partPrices }),
      },
      budgets,
      objective,
    },
  };
}

/** The prices that every find has alike, sent once: they differ by find only in what is like it, and a body has its limit. */
function commonTo(lists: readonly (readonly Comparable[])[]): ReadonlyMap<string, Comparable> {
  const [first = [], ...others] = lists;
  const texts = others.map((list) => new Set(list.map((one) => JSON.stringify(one))));
  return new Map(
    first.flatMap((one) => {
      const text = JSON.stringify(one);
      return texts.every((list) => list.has(text)) ? [[text, one] as const] : [];
    }),
  );
}
