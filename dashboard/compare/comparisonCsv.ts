import type { Reference } from "../api/types.ts";
import { namesIn } from "../find/names.ts";
import { isInvented } from "../finds/ownership.ts";
import { csvOf, guarded, numberCell } from "../ownPrices/records.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { stopReason } from "../words/verdict.ts";
import type { Compared } from "./compared.ts";
import { describedFields } from "./described.ts";

/** What a cell holds: words, a number, or nothing. */
type Value = string | number | null | undefined;

interface Column {
  /** Name and unit. */
  readonly name: string;
  readonly of: (compared: Compared) => Value;
  /** Figures that a stopped find has none of. */
  readonly figure?: true;
}

/**
 * The finds side by side as a file (RFC 4180): a row a find, names with unit and currency in the header, numbers with a
 * decimal point. A find that is stopped has no figures. Text that a spreadsheet would run as a formula is kept text.
 * @param goal what one more hour must earn
 */
export function comparisonCsv(finds: readonly Compared[], goal: number, known: Reference): string {
  const columns = columnsOf(goal, known);
  const rows = finds.map((compared) =>
    columns.map(({ of, figure }) => cellOf(figure === true && compared.stopped ? null : of(compared))),
  );
  return csvOf([columns.map(({ name }) => guarded(name)), ...rows]);
}

function columnsOf(goal: number, known: Reference): readonly Column[] {
  const { currency } = known;
  const names = namesIn(known);
  const money = `(${currency})`;
  const figures: readonly Column[] = [
    { name: `goal (${currency}/h)`, of: () => goal },
    { name: `margin per hour (${currency}/h)`, of: ({ row }) => row?.rate },
    { name: `margin per hour, 1 in 10 below (${currency}/h)`, of: ({ row }) => row?.p10 },
    { name: `margin per hour, 1 in 10 above (${currency}/h)`, of: ({ row }) => row?.p90 },
    { name: "misses the goal (chance 0 to 1)", of: ({ row }) => row?.misses },
    { name: `margin ${money}`, of: ({ row }) => row?.shown.margin?.mean },
    { name: `margin, 1 in 10 below ${money}`, of: ({ row }) => row?.shown.margin?.p10 },
    { name: `margin, 1 in 10 above ${money}`, of: ({ row }) => row?.shown.margin?.p90 },
    { name: "loses money (chance 0 to 1)", of: ({ row }) => row?.shown.lossProbability },
    { name: "your hours (h)", of: ({ row }) => row?.shown.hours?.mean },
    { name: "your hours, 1 in 10 below (h)", of: ({ row }) => row?.shown.hours?.p10 },
    { name: "your hours, 1 in 10 above (h)", of: ({ row }) => row?.shown.hours?.p90 },
    { name: `cash in it ${money}`, of: ({ row }) => row?.shown.cashNeeded },
    { name: "until sold (days)", of: ({ row }) => row?.shown.elapsedDays },
    { name: `expected takings ${money}`, of: ({ row }) => row?.shown.sale?.takings },
    { name: `price asked or paid ${money}`, of: ({ price }) => price },
    { name: "already paid", of: ({ paid }) => yesNo(paid) },
    { name: `most to pay ${money}`, of: ({ appraisal }) => appraisal.decision.walkAwayPrice },
  ];
  return [
    { name: "find", of: ({ find }) => find.name },
    { name: "invented", of: ({ find }) => yesNo(isInvented(find)) },
    {
      name: "decision",
      of: (one) => (one.stopped ? "Stopped" : COURSE_WORDS[one.appraisal.decision.course].name),
    },
    { name: "stopped because", of: ({ stopped, appraisal }) => (stopped ? stopReason(appraisal) : null) },
    { name: "figures of", of: ({ row }) => row && COURSE_WORDS[row.shown.course].name },
    ...figures.map((column) => ({ ...column, figure: true as const })),
    { name: "checks made", of: ({ appraisal }) => appraisal.looked.made },
    { name: "checks that apply", of: ({ appraisal }) => appraisal.looked.applicable },
    { name: "faults to cure", of: ({ appraisal }) => listOf(appraisal.readiness.blocking.map(names.check)) },
    { name: "looks owed", of: ({ appraisal }) => listOf(appraisal.readiness.owed.map(names.check)) },
    {
      name: "look first",
      of: ({ appraisal: { decision } }) => decision.lookFirst && names.any(decision.lookFirst),
    },
    ...describedFields(known).map(({ label, wordOf }) => ({
      name: label.toLowerCase(),
      of: ({ find }: Compared) => wordOf(find.body),
    })),
  ];
}

const yesNo = (yes: boolean) => (yes ? "yes" : "no");
const listOf = (names: readonly string[]) => names.join("; ");

/** A number is no formula, whatever its sign; only words are guarded. */
function cellOf(value: Value): string {
  return typeof value === "number" ? numberCell(value) : guarded(value ?? "");
}
