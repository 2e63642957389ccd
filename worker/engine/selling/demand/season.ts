import type { ValueBelief } from "../../valuation/valueBelief.ts";
import { REFERENCE } from "../../valuation/valueLayout.ts";
import type { SeasonWeek } from "./arrivals.ts";
import type { SellingTables } from "./sellingTables.ts";

/** What the months do, January first. */
export interface Seasons {
  /** Multiplies interested buyers. */
  readonly arrivals: readonly number[];
  /** Log of the going rate, over any month alike. */
  readonly logRate: readonly number[];
}

/** Seasons of buyers from the table, of going rates from what is believed of prices. */
export function seasonsOf(
  { byMonth }: Pick<SellingTables, "byMonth">,
  { coefficients, layout }: Pick<ValueBelief, "coefficients" | "layout">,
): Seasons {
  return {
    arrivals: byMonth,
    logRate: layout.month.map((column) => (column === REFERENCE ? 0 : coefficients[column]!)),
  };
}

const MONTHS = 12;
export const WEEKS_A_YEAR = 365.25 / 7;
export const WEEKS_A_MONTH = WEEKS_A_YEAR / MONTHS;

/**
 * Weeks from the middle of a month on, one more than asked for so that the end of the last is told too. Between the middles of two months all goes evenly from
 * one to the other.
 * @param month of listing, 1 to 12; null: the seasons averaged, every week alike
 * @param arrivalsPerWeek the seasons averaged
 * @param monthsHeld months it is kept back first
 */
export function seasonWeeks(
  seasons: Seasons,
  month: number | null,
  weeks: number,
  arrivalsPerWeek: number,
  monthsHeld = 0,
): readonly SeasonWeek[] {
  const at = (values: readonly number[], position: number) => {
    const before = Math.floor(position);
    const share = position - before;
    return (1 - share) * values[before % MONTHS]! + share * values[(before + 1) % MONTHS]!;
  };
  const ahead: SeasonWeek[] = [];
  for (let week = 0; week <= weeks; week++) {
    const position = (month ?? 1) - 1 + monthsHeld + week / WEEKS_A_MONTH;
    ahead.push(
      month === null
        ? { arrivals: arrivalsPerWeek, logRate: 0 }
        : {
            arrivals: arrivalsPerWeek * at(seasons.arrivals, position),
            logRate: at(seasons.logRate, position) - seasons.logRate[month - 1]!,
          },
    );
  }
  return ahead;
}
