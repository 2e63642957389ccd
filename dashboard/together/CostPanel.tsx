import { useMemo } from "preact/hooks";
import { spreadScene } from "../charts/spreadScene.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { money } from "../words/money.ts";
import { moneyRange } from "../words/range.ts";
import {
  COST_ACROSS,
  COST_HEAD,
  COST_KEY,
  COST_UP,
  costLines,
  costSentence,
  courseChosen,
  yesOrNo,
} from "../words/togetherPlanes.ts";
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
      lines={[COST_KEY]}
      dimmed={dimmed}
      rows={priced.map(({ row }) => row)}
      spec={{
        label: costSentence(title),
        across: COST_ACROSS,
        up: COST_UP,
        sayX: (value) => money(value, currency),
        sayY: (value) => money(value, currency),
        scene,
      }}
      tellings={priced.map(({ row: { shown, chosen }, value }) => [
        courseChosen(shown.course, chosen),
        ...costLines(value, shown.cashNeeded, currency),
      ])}
      table={{
        head: COST_HEAD,
        rows: priced.map(({ row: { find, shown, chosen }, value }) => [
          find.name,
          COURSE_WORDS[shown.course].name,
          yesOrNo(chosen),
          money(shown.cashNeeded, currency),
          money(value.p50, currency),
          moneyRange(value.p10, value.p90, currency),
        ]),
      }}
    />
  );
}
