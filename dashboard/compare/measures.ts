import type { Reference } from "../api/types.ts";
import { type Names, namesIn } from "../find/names.ts";
import { chance } from "../words/chance.ts";
import { owedSaid, priceSaid, riskSaid, type Said, unknownSaid } from "../words/compareWords.ts";
import { MEASURE_WORDS, untilSold } from "../words/measures.ts";
import { money } from "../words/money.ts";
import { between, moneyRange } from "../words/range.ts";
import { bareHours, hours } from "../words/time.ts";
import { lossWords } from "../words/titles.ts";
import type { Compared } from "./compared.ts";

/** What one find says to one measure. */
export interface Cell extends Said {
  /** What is compared, in the measure's unit; null where the find has no figure for it. */
  readonly value: number | null;
  /** Its range, 8 outcomes in 10; the value itself where it has none. */
  readonly low: number;
  readonly high: number;
}

/** A row of the comparison. */
export interface Measure {
  readonly id: string;
  readonly label: string;
  /** What the label leaves open: unit, scope. */
  readonly sub: string;
  /** How it is drawn: boxes of ten, a range with its mark, a length from nought, or in words alone. */
  readonly drawn: "tenths" | "range" | "length" | "words";
  /** What stands beside the figure gets a line of its own. */
  readonly stacked?: true;
  /** Null where nothing can be said. */
  cell(compared: Compared, known: Reference, names: Names): Cell | null;
}

const DOT = " \u00b7 ";

type Figure = (compared: Compared & { readonly row: NonNullable<Compared["row"]> }) => Cell | null;

/** A measure that needs the figures of a course. */
const figure = (cell: Figure): Measure["cell"] => {
  return (compared) => (compared.row === null ? null : cell({ ...compared, row: compared.row }));
};

const exact = (value: number | null, said: Said): Cell => ({
  ...said,
  value,
  low: value ?? 0,
  high: value ?? 0,
});

/** The rows below margin per hour, in the order in which they stand where the finds differ alike in all. */
export const MEASURES: readonly Measure[] = [
  {
    id: "misses",
    ...MEASURE_WORDS.misses,
    drawn: "tenths",
    cell: figure(({ row }) => ({
      strong: chance(row.misses, 10),
      rest: "",
      value: row.misses,
      low: 0,
      high: 1,
    })),
  },
  {
    id: "margin",
    ...MEASURE_WORDS.margin,
    drawn: "range",
    stacked: true,
    cell: figure(({ row: { shown }, appraisal: { currency } }) => {
      if (shown.margin === null) return null;
      const { mean, p10, p90 } = shown.margin;
      const rest = `${moneyRange(p10, p90, currency)}${DOT}${lossWords(shown)}`;
      return { strong: money(mean, currency), rest, value: mean, low: p10, high: p90 };
    }),
  },
  {
    id: "hours",
    ...MEASURE_WORDS.hours,
    drawn: "range",
    cell: figure(({ row: { shown } }) => {
      if (shown.hours === null) return null;
      const { mean, p10, p90 } = shown.hours;
      const rest = `${DOT}${between(bareHours(p10), hours(p90))}`;
      return { strong: hours(mean), rest, value: mean, low: p10, high: p90 };
    }),
  },
  {
    id: "cash",
    ...MEASURE_WORDS.cash,
    drawn: "length",
    cell: figure(({ row: { shown }, appraisal: { currency } }) => {
      if (shown.cashNeeded === null) return null;
      const rest = shown.elapsedDays === null ? "" : `${DOT}${untilSold(shown.elapsedDays)}`;
      return exact(shown.cashNeeded, { strong: money(shown.cashNeeded, currency), rest });
    }),
  },
  {
    id: "price",
    ...MEASURE_WORDS.price,
    drawn: "words",
    stacked: true,
    cell: figure(({ price, paid, appraisal: { decision, currency } }) =>
      exact(decision.walkAwayPrice, priceSaid(price, paid, decision.walkAwayPrice, currency)),
    ),
  },
  {
    id: "risk",
    ...MEASURE_WORDS.risk,
    drawn: "words",
    cell: figure(({ row: { shown }, appraisal: { currency } }) =>
      shown.margin === null ? null : exact(shown.margin.p10, riskSaid(shown.margin.p10, currency)),
    ),
  },
  {
    id: "owed",
    ...MEASURE_WORDS.owed,
    drawn: "words",
    stacked: true,
    cell({ stopped, appraisal: { readiness } }, _, names) {
      if (stopped) return null;
      return exact(
        readiness.blocking.length + readiness.owed.length,
        owedSaid(readiness, names.check, names.isPaper),
      );
    },
  },
];

/** What to look at next is no quantity: it closes the table. */
export const UNKNOWN: Measure = {
  id: "unknown",
  ...MEASURE_WORDS.unknown,
  drawn: "words",
  stacked: true,
  cell: ({ stopped, appraisal }, known, names) =>
    stopped ? null : exact(null, unknownSaid(appraisal, known, names.any)),
};

/** A measure with what each find says to it, in the order of the finds. */
export interface MeasureRow {
  readonly measure: Measure;
  readonly cells: readonly (Cell | null)[];
}

/** Every row of the comparison, unordered. */
export function measureRows(finds: readonly Compared[], known: Reference): readonly MeasureRow[] {
  const names = namesIn(known);
  return [...MEASURES, UNKNOWN].map((measure) => ({
    measure,
    cells: finds.map((find) => measure.cell(find, known, names)),
  }));
}
