import { csvOf, guarded } from "../ownPrices/records.ts";
import { COURSE_WORDS } from "../words/course.ts";
import type { SetRow } from "./setRows.ts";
import type { Standing } from "./standing.ts";

const HEAD = [
  "find",
  "chosen",
  "course",
  "held",
  "currency",
  "margin per hour",
  "margin per hour p10",
  "margin per hour p90",
  "margin",
  "margin p10",
  "margin p90",
  "net benefit",
  "hours",
  "hours p10",
  "hours p90",
  "cash",
  "note",
];

/**
 * The set as a file: the finds with figures in the order of the page, then what the chosen come to. Money in the currency named, hours in hours, both
 * to the hundredth. No cell is taken for a formula by a spreadsheet.
 */
export function setCsv({ rows, answer }: Pick<Standing, "rows" | "answer">): string {
  return csvOf([HEAD, ...rows.map((row) => cellsOf(row, answer.currency)), ...totalOf(answer)]);
}

function cellsOf({ find, chosen, shown, held }: SetRow, currency: string): string[] {
  const { marginPerHour, margin, hours, netBenefit, cashNeeded } = shown;
  const figures = [
    marginPerHour.rate,
    marginPerHour.p10,
    marginPerHour.p90,
    margin.mean,
    margin.p10,
    margin.p90,
    netBenefit,
    hours.mean,
    hours.p10,
    hours.p90,
    cashNeeded,
  ].map(figure);
  const note = find.invented ? "invented find" : "";
  const course = COURSE_WORDS[shown.course].name;
  return [
    guarded(find.name),
    chosen ? "yes" : "no",
    course,
    held === null ? "no" : "yes",
    currency,
    ...figures,
    note,
  ];
}

function totalOf({ total, currency }: Standing["answer"]): string[][] {
  if (total === null) return [];
  const { margin, marginP10, marginP90, netBenefit, hours, hoursP10, hoursP90, cash } = total;
  const figures = [margin, marginP10, marginP90, netBenefit, hours, hoursP10, hoursP90, cash].map(figure);
  return [
    ["The whole set", "yes", "", "", currency, "", "", "", ...figures, "prices from invented demo data"],
  ];
}

/** Figures are no text: a minus before one is no formula. */
function figure(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}
