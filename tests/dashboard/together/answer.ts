import type { ComparedFind, ComparisonAnswer, ComparisonBody } from "../../../dashboard/api/types.ts";
import type { Find } from "../../../dashboard/finds/find.ts";
import { setRows } from "../../../dashboard/together/setRows.ts";
import type { Standing } from "../../../dashboard/together/standing.ts";
import { open } from "../fixtures/appraisal.ts";

/** Invented finds and answers, shaped as the API answers. */
export function find(id: string, more: Partial<Find> = {}): Find {
  const body = { find: { category: "hybrid", era: "1990s", frameMaterial: "steel", componentTier: "mid" } };
  return {
    id,
    name: `Bike ${id}`,
    called: `bike ${id}`,
    where: "",
    line: "",
    invented: false,
    body: body as unknown as Find["body"],
    ...more,
  };
}

type Course = ComparedFind["courses"][number];

/** A find with one open course beside leaving. */
export function compared(id: string, course: Course): ComparedFind {
  const band = { p10: 80, p25: 90, p50: 100, p75: 110, p90: 120 };
  return {
    id,
    decision: { course: course.course, stop: null },
    cautions: [],
    looked: { made: 9, applicable: 10, groups: [] },
    value: { asFound: band, madeSafe: band, restored: null, parts: band },
    courses: [course, open("leave", 0, 0)],
  } as unknown as ComparedFind;
}

export const WORK = (margin: number, hours: number, cash = 20): Course =>
  open("make-safe", margin, hours, { cashNeeded: cash });

/** An answer in which each find named takes its course, in the order given. */
export function answer(
  finds: readonly ComparisonAnswer["finds"][number][],
  chosen: readonly string[],
  more: Partial<ComparisonAnswer> = {},
): ComparisonAnswer {
  const merit = finds.flatMap((one) => {
    const course = "courses" in one ? one.courses.find(({ course }) => course !== "leave") : undefined;
    if (course === undefined) return [];
    const hours = course.hours?.mean ?? 0;
    const marginPerHour = course.marginPerHour?.rate ?? 0;
    return [{ id: one.id, course: course.course, hours, marginPerHour, chosen: chosen.includes(one.id) }];
  });
  return {
    currency: "EUR",
    dataVersion: "0",
    demoData: true,
    objective: "netBenefit",
    budgets: { hours: 8, cash: 150, slots: 2 },
    chosen: merit.filter((one) => one.chosen).map(({ id, course }) => ({ id, course })),
    total: TOTAL,
    chanceHoursOverrun: 0.16,
    shadowPrices: { hour: 0, cash: 0, slot: 0 },
    nextIn: null,
    proven: true,
    gap: 0,
    meritOrder: merit.sort((a, b) => b.marginPerHour - a.marginPerHour),
    overruns: [],
    finds,
    ...more,
  };
}

export const TOTAL: NonNullable<ComparisonAnswer["total"]> = {
  netBenefit: 40,
  margin: 120,
  marginP10: 50,
  marginP90: 190,
  hours: 6.82,
  hoursP10: 5.4,
  hoursP50: 6.7,
  hoursP80: 7.78,
  hoursP90: 8.4,
  cash: 85.53,
  slots: 2,
};

/** The rows of an answer, with nothing held but what is given. */
export function stood(
  given: ComparisonAnswer,
  finds: readonly Find[] = given.finds.map(({ id }) => find(id)),
  held: Readonly<Record<string, Course["course"]>> = {},
): Standing {
  const asked = { finds: finds.map(({ id }) => ({ find: { id }, course: held[id] ?? null })) };
  return { answer: given, goal: 12, ...setRows(given, asked as unknown as ComparisonBody, finds) };
}
