import { TableDetails } from "../parts/TableDetails.tsx";
import { chance } from "../words/chance.ts";
import { EIGHT_IN_TEN } from "../words/common.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { goalMoney, rate } from "../words/money.ts";
import { rateRange } from "../words/range.ts";
import type { FindRow } from "./row.ts";

/** Margin per hour by find as a table, folded. */
export function RateTable(props: { rows: readonly FindRow[]; goal: number; currency: string }) {
  const { rows, goal, currency } = props;
  return (
    <TableDetails
      caption="Margin per hour by find"
      head={["Find", "Course", "An hour", EIGHT_IN_TEN, `Misses ${goalMoney(goal, currency)}`, "Added hours"]}
      rows={rows.map((row) => [
        row.find.name,
        courseWords(row),
        rate(row.rate, currency),
        rateRange(row.p10, row.p90, currency),
        chance(row.misses, 10),
        row.added ?? "no added hours",
      ])}
    />
  );
}

function courseWords(row: FindRow): string {
  const shown = COURSE_WORDS[row.shown.course].name;
  return row.verdict === "leave" ? `Leave (best other: ${shown.toLowerCase()})` : shown;
}
