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
  /** Older prices of the user's own that had to stay out. */
  readonly pricesLeft: number;
}

type Comparable = NonNullable<AppraisalBody["comparables"]>[number];

/** Readings (finds by prices) that the API works out at once. */
const MOST_READINGS = 20_000;

/**
 * The question which finds to take together, from the question of each find. There is one workshop for all, so of theirs it takes what is the
 * workshop's: the goal and the prices of parts. The month of sale goes along with each find.
 * @param finds each with its own body; the id of the dashboard becomes the label in the answer
 */
export function setBody(finds: readonly Find[], wish: SetWish): SetQuestion {
  const { hourlyGoal, budgets, objective, courses } = wish;
  const workshops = finds.map(({ body }) => body.workshop);
  const partPrices = workshops.find((one) => one?.partPrices !== undefined)?.partPrices;
  const most = Math.floor(MOST_READINGS / Math.max(1, finds.length));
  // Newest first, so that the oldest are left.
  const own = finds.map(({ body }) => (body.comparables ?? []).slice(0, most));
  const common = commonTo(own);
  const pricesLeft = Math.max(0, ...finds.map(({ body }) => (body.comparables?.length ?? 0) - most));
  return {
    pricesLeft,
    body: {
      finds: finds.map(({ id, body }, i) => {
        const apart = (own[i] ?? []).filter((one) => !common.has(JSON.stringify(one)));
        return {
          find: { ...body.find, id },
          observations: body.observations ?? {},
          ...(apart.length === 0 ? {} : { comparables: apart }),
          ...(body.workshop?.month === undefined ? {} : { month: body.workshop.month }),
          course: courses[id] ?? null,
        };
      }),
      ...(common.size === 0 ? {} : { comparables: [...common.values()] }),
      workshop: {
        hourlyGoal,
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
