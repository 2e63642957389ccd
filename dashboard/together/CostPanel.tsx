import { useMemo } from "preact/hooks";
import { spreadScene } from "../charts/spreadScene.ts";
import { EIGHT_IN_TEN } from "../words/common.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { money } from "../words/money.ts";
import { moneyRange } from "../words/range.ts";
import { costTitle } from "../words/togetherTitles.ts";
import { costSpread, pricedRows } from "./charts.ts";
import { PlanePanel } from "./PlanePanel.tsx";
import type { Standing } from "./standing.ts";

/** What a find would fetch against the cash in it. */
export function CostPanel({ stood, dimmed }: { stood: Standing; dimmed: boolean }) {
  const { currency } = stood.answer;
  const priced = useMemo(() => pricedRows(stood.rows), [stood]);
  const told = useMemo(() => costSpread(priced), [priced]);
  const scene = useMemo(() => spreadScene.bind(null, told), [told]);
  const title = costTitle(priced.map(({ row, value }) => ({ value: value.p50, cost: row.shown.cashNeeded })));
  return (
    <PlanePanel
      id="price-against-cash"
      title={title}
      lines={[
        "Likely price in the state its course sells it in, before haggling and fees. Above the line it sells for more than the cash in it; your hours are not in it. Filled: chosen. Strokes: 8 outcomes in 10.",
      ]}
      dimmed={dimmed}
      rows={priced.map(({ row }) => row)}
      spec={{
        label: `${title}. Likely price against the cash in it.`,
        across: "cash in it",
        up: "likely price",
        sayX: (value) => money(value, currency),
        sayY: (value) => money(value, currency),
        scene,
      }}
      tellings={priced.map(({ row: { shown, chosen }, value }) => [
        `${COURSE_WORDS[shown.course].name}, ${chosen ? "chosen" : "left"}`,
        `likely price ${money(value.p50, currency)}, 8 in 10: ${moneyRange(value.p10, value.p90, currency)}`,
        `${money(shown.cashNeeded, currency)} cash in it`,
      ])}
      table={{
        head: ["Find", "Course", "Chosen", "Cash in it", "Likely price", EIGHT_IN_TEN],
        rows: priced.map(({ row: { find, shown, chosen }, value }) => [
          find.name,
          COURSE_WORDS[shown.course].name,
          chosen ? "yes" : "no",
          money(shown.cashNeeded, currency),
          money(value.p50, currency),
          moneyRange(value.p10, value.p90, currency),
        ]),
      }}
    />
  );
}
