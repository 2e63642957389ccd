import { TableDetails } from "../parts/TableDetails.tsx";
import { chance } from "../words/chance.ts";
import { courseTold, MARGIN_BY_FIND, NO_ADDED_HOURS, ratesHead } from "../words/marginChart.ts";
import { rate } from "../words/money.ts";
import { rateRange } from "../words/range.ts";
import type { FindRow } from "./row.ts";

/** Margin per hour by find as a table, folded. */
export function RateTable(props: { rows: readonly FindRow[]; goal: number; currency: string }) {
  const { rows, goal, currency } = props;
  return (
    <TableDetails
      caption={MARGIN_BY_FIND}
      head={ratesHead(goal, currency)}
      rows={rows.map((row) => [
        row.find.name,
        courseTold(row.verdict, row.shown.course),
        rate(row.rate, currency),
        rateRange(row.p10, row.p90, currency),
        chance(row.misses, 10),
        row.added ?? NO_ADDED_HOURS,
      ])}
    />
  );
}
