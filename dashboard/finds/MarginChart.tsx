import { useCallback, useMemo } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import { Axis, GoalFlag } from "../charts/Axis.tsx";
import type { BarsSettings } from "../charts/bars.ts";
import { PlotLayer } from "../charts/PlotLayer.tsx";
import type { Place } from "../charts/place.ts";
import { createBarsChart } from "../charts/rowCharts.ts";
import { percent, rateScale } from "../charts/scale.ts";
import { COURSE_PATH, COURSE_TOKEN } from "../signs/shapes.ts";
import { go } from "../state/route.ts";
import { LOSES_MONEY } from "../words/common.ts";
import { MARGIN_BY_FIND, yourGoal } from "../words/marginChart.ts";
import { rate } from "../words/money.ts";
import { ChartKey } from "./ChartKey.tsx";
import { MarginRow } from "./MarginRow.tsx";
import { RateTable } from "./RateTable.tsx";
import { chartSentence, type FindRow, rowLines } from "./row.ts";

/** Margin per hour by find: one row each, on one axis with the goal. The chart is the list. */
export function MarginChart({
  rows,
  goal,
  currency,
  reference,
  dimmed,
}: {
  rows: readonly FindRow[];
  goal: number;
  currency: string;
  reference: Reference;
  dimmed: boolean;
}) {
  const scale = useMemo(() => rateScale(rows, goal, innerWidth < 600 ? 5 : 7), [rows, goal]);
  const settings = useCallback(
    (place: Place, active: number | null): BarsSettings => ({
      bars: rows.map((row) => ({
        low: row.p10,
        high: row.p90,
        at: row.rate,
        sign: COURSE_PATH[row.verdict],
        token: COURSE_TOKEN[row.verdict],
        open: row.hardlyLooked,
      })),
      strips: place.strips,
      scale,
      goal,
      dotted: null,
      losses: true,
      active,
      width: place.width,
      height: place.height,
    }),
    [rows, scale, goal],
  );
  return (
    <>
      <div class="axisrow">
        <div class="axis flags" aria-hidden="true">
          {roomForLoss(percent(0, scale), percent(goal, scale), 16) && (
            <span
              class={roomForLoss(percent(0, scale), percent(goal, scale), 31) ? "start" : "start onlywide"}
            >
              {LOSES_MONEY}
            </span>
          )}
          <GoalFlag at={percent(goal, scale)}>{yourGoal(goal, currency)}</GoalFlag>
        </div>
      </div>
      <div class={dimmed ? "plotbox dim" : "plotbox"}>
        <ol class="rows">
          {rows.map((row) => (
            <MarginRow key={row.find.id} row={row} reference={reference} />
          ))}
        </ol>
        <PlotLayer
          label={chartSentence(rows, `${MARGIN_BY_FIND}.`, goal)}
          create={createBarsChart}
          settings={settings}
          tellings={rows.map((row) => ({
            title: row.find.name,
            lines: rowLines(row, goal),
            at: percent(row.rate, scale),
          }))}
          onPick={(i) => {
            const row = rows[i];
            if (row !== undefined) go(`/finds/${encodeURIComponent(row.find.id)}`);
          }}
        />
      </div>
      <div class="axisrow">
        <Axis scale={scale} say={(value) => rate(value, currency)} />
      </div>
      <ChartKey reference={reference} />
      <RateTable rows={rows} goal={goal} currency={currency} />
    </>
  );
}

/** Whether "loses money", so wide, can stand over its ground without touching the flag, all in per cent of the axis. */
function roomForLoss(nought: number, goal: number, wide: number): boolean {
  return nought > 9 && goal > wide;
}
