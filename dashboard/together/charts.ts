import type { CourseId, CourseOutcome } from "../api/types.ts";
import type { Block, BlocksTold } from "../charts/blocks.ts";
import type { Ray, SpreadPoint, SpreadTold } from "../charts/spread.ts";
import { hardlyLooked } from "../courses/standing.ts";
import { COURSE_PATH, COURSE_TOKEN } from "../signs/shapes.ts";
import { yourGoal } from "../words/marginChart.ts";
import { goalMoney, rate } from "../words/money.ts";
import { COST_LINE, yourHours } from "../words/togetherPlanes.ts";
import { isOpen, type OpenCourse, type SetRow } from "./setRows.ts";
import type { Standing } from "./standing.ts";

type ValueState = "asFound" | "madeSafe" | "restored" | "parts";

/** The state in which a course sells. */
const SOLD_AS: Readonly<Record<Exclude<CourseId, "leave">, ValueState>> = {
  restore: "restored",
  "make-safe": "madeSafe",
  "sell-as-found": "asFound",
  "break-for-parts": "parts",
};

/** More finds than this and their other courses would bury them. */
const MOST_WITH_OTHERS = 10;

/** The merit order as blocks. */
export function meritBlocks({ rows, answer, goal }: Standing): BlocksTold {
  const { hours: given } = answer.budgets;
  return {
    blocks: rows.map(
      ({ find, number, shown, chosen, compared }): Block => ({
        id: find.id,
        number,
        name: find.name,
        hours: shown.hours.mean,
        ...shown.marginPerHour,
        chosen,
        hardlyLooked: hardlyLooked(compared),
        ...signOf(shown.course),
      }),
    ),
    goal,
    goalWords: flagWords(goal, answer.currency),
    hours: given,
    hoursWords: given === null ? "" : yourHours(given),
  };
}

/** Money left against hours, over rays of equal rate: nought, the goal, twice the goal. */
export function hoursSpread({ rows, answer, goal }: Standing): SpreadTold {
  const goalRay: Ray = {
    slope: goal,
    kind: "goal",
    text: flagWords(goal, answer.currency),
  };
  const double = `${rate(2 * goal, answer.currency)}/h`;
  const twice: Ray[] = goal > 0 ? [{ slope: 2 * goal, kind: "plain", text: [double, double] }] : [];
  return {
    points: rows.map((row) => {
      const { margin, hours: taken } = row.shown;
      return {
        ...pointOf(row, margin.mean < 0),
        x: { at: taken.mean, low: taken.p10, high: taken.p90 },
        y: { at: margin.mean, low: margin.p10, high: margin.p90 },
        others: othersOf(row, rows.length).map((course) => ({
          x: course.hours.mean,
          y: course.margin.mean,
          ...signOf(course.course),
        })),
      };
    }),
    rays: [...(goal > 0 ? [{ slope: 0, kind: "edge", text: ["", ""] } as const] : []), goalRay, ...twice],
    ground: 0,
    belowNought: true,
  };
}

/** A find whose course has a price. */
export interface PricedRow {
  readonly row: SetRow;
  readonly value: { readonly p10: number; readonly p50: number; readonly p90: number };
}

/** The finds with what they would fetch in the state their course sells them in. */
export function pricedRows(rows: readonly SetRow[]): readonly PricedRow[] {
  return rows.flatMap((row) => {
    const { course } = row.shown;
    const value = course === "leave" ? null : (row.compared.value?.[SOLD_AS[course]] ?? null);
    return value === null ? [] : [{ row, value }];
  });
}

/** What a find would fetch against the cash in it, over the line where both are the same. */
export function costSpread(priced: readonly PricedRow[]): SpreadTold {
  return {
    points: priced.map(({ row, value }) => ({
      ...pointOf(row, value.p50 < row.shown.cashNeeded),
      x: { at: row.shown.cashNeeded, low: null, high: null },
      y: { at: value.p50, low: value.p10, high: value.p90 },
      others: [],
    })),
    rays: [{ slope: 1, kind: "edge", text: COST_LINE }],
    ground: 1,
    belowNought: false,
  };
}

function flagWords(goal: number, currency: string): readonly [string, string] {
  const figure = `${goalMoney(goal, currency)}/h`;
  return [yourGoal(goal, currency), figure];
}

function pointOf(
  { find, number, chosen, shown }: SetRow,
  loses: boolean,
): Omit<SpreadPoint, "x" | "y" | "others"> {
  return { id: find.id, number, name: find.name, filled: chosen, hatched: loses, ...signOf(shown.course) };
}

function othersOf({ compared, shown }: SetRow, finds: number): readonly OpenCourse[] {
  if (finds > MOST_WITH_OTHERS) return [];
  return compared.courses.filter(isOpen).filter(({ course }) => course !== shown.course);
}

function signOf(course: CourseOutcome["course"]): { sign: string; token: string } {
  return { sign: COURSE_PATH[course], token: COURSE_TOKEN[course] };
}
