import { isInvented } from "../finds/ownership.ts";
import { csvOf, guarded, numberCell } from "../ownPrices/records.ts";
import { COURSE_WORDS } from "../words/course.ts";
import type { SetRow } from "./setRows.ts";
import type { Standing } from "./standing.ts";

/** Names as in the file of the page Side by side: with unit and currency. */
function headOf(currency: string): string[] {
  const money = `(${currency})`;
  return [
    "find",
    "invented",
    "chosen",
    "course",
    "held to it",
    `margin per hour (${currency}/h)`,
    `margin per hour, 1 in 10 below (${currency}/h)`,
    `margin per hour, 1 in 10 above (${currency}/h)`,
    `margin ${money}`,
    `margin, 1 in 10 below ${money}`,
    `margin, 1 in 10 above ${money}`,
    `left after the goal is paid ${money}`,
    "your hours (h)",
    "your hours, 1 in 10 below (h)",
    "your hours, 1 in 10 above (h)",
    `cash in it ${money}`,
    "note",
  ];
}

/**
 * The set as a file (RFC 4180): the finds with figures in the order of the page, then what the chosen come to. No cell is taken for a formula by a
 * spreadsheet.
 */
export function setCsv({ rows, answer }: Pick<Standing, "rows" | "answer">): string {
  return csvOf([headOf(answer.currency), ...rows.map(cellsOf), ...totalOf(answer)]);
}

function cellsOf({ find, chosen, shown, held }: SetRow): string[] {
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
  ].map(numberCell);
  return [
    guarded(find.name),
    isInvented(find) ? "yes" : "no",
    chosen ? "yes" : "no",
    COURSE_WORDS[shown.course].name,
    held === null ? "no" : "yes",
    ...figures,
    "",
  ];
}

function totalOf({ total }: Standing["answer"]): string[][] {
  if (total === null) return [];
  const { margin, marginP10, marginP90, netBenefit, hours, hoursP10, hoursP90, cash } = total;
  const figures = [margin, marginP10, marginP90, netBenefit, hours, hoursP10, hoursP90, cash].map(numberCell);
  return [["The whole set", "", "yes", "", "", "", "", "", ...figures, "prices from invented demo data"]];
}
