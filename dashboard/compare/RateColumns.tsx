import { useMemo } from "preact/hooks";
import { percent } from "../charts/scale.ts";
import { useMarks } from "../charts/useMarks.ts";
import { chartSentence, rowLines } from "../finds/row.ts";
import { go } from "../state/route.ts";
import { CHART, withKeys } from "../words/chart.ts";
import { MARGIN_PER_HOUR, MARK_AND_BAR } from "../words/common.ts";
import { goalFlag } from "../words/goal.ts";
import { MARGIN_BY_FIND } from "../words/marginChart.ts";
import { rate } from "../words/money.ts";
import { ONLY_LEAVING, STOPPED_NO_FIGURE } from "../words/noFigure.ts";
import { rateRange } from "../words/range.ts";
import { columnScale } from "./cellScale.ts";
import type { Compared } from "./compared.ts";
import { RateColumn } from "./RateColumn.tsx";
import { tipPlace } from "./tipPlace.ts";

/** Height of the drawing, in pixels. */
const TALL = 270;

interface RateColumnsProps {
  readonly finds: readonly Compared[];
  readonly goal: number;
  readonly currency: string;
  readonly dimmed: boolean;
}

/** Margin per hour, one upright bar a find on one axis with the goal. One tab stop: arrows move between the finds. */
export function RateColumns({ finds, goal, currency, dimmed }: RateColumnsProps) {
  const rows = useMemo(() => finds.flatMap(({ row }) => (row === null ? [] : [row])), [finds]);
  const scale = useMemo(() => columnScale(rows, goal, 6), [rows, goal]);
  const tellings = finds.map(({ find, row }) =>
    row === null ? null : { title: find.name, lines: rowLines(row, goal) },
  );
  const open = (i: number) => go(`/finds/${encodeURIComponent(finds[i]?.find.id ?? "")}`);
  const { active, telling, spoken, point, onKeyDown, onBlur, onPointerLeave } = useMarks(tellings, open);
  const from = (value: number) => `${100 - percent(value, scale)}%`;
  const near = (tick: number) => Math.abs(percent(tick, scale) - percent(goal, scale)) < 6;

  return (
    <section class={dimmed ? "ratecols dim" : "ratecols"} aria-labelledby="rate-title">
      <div class="lab">
        <h3 id="rate-title">{MARGIN_PER_HOUR}</h3>
        <p class="small">{MARK_AND_BAR}</p>
      </div>
      <div class="yaxis" aria-hidden="true" style={{ height: `${TALL}px` }}>
        {scale.ticks.map((tick) => (
          <span key={tick} class={near(tick) ? "near" : ""} style={{ top: from(tick) }}>
            {rate(tick, currency)}
          </span>
        ))}
      </div>
      <div
        class="ratearea"
        role="application"
        aria-roledescription={CHART}
        aria-label={withKeys(chartSentence(rows, `${MARGIN_BY_FIND}.`, goal))}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the one tab stop of the chart, moved in by arrow keys
        tabIndex={0}
        onKeyDown={onKeyDown}
        onBlur={onBlur}
        onPointerLeave={onPointerLeave}
      >
        {finds.map(({ find, row }, i) => (
          <RateColumn
            key={find.id}
            row={row}
            scale={scale}
            goal={goal}
            height={TALL}
            active={active === i}
            onPoint={() => point(row === null ? null : i)}
            onPick={() => row !== null && open(i)}
          />
        ))}
        <span class="flag turned" aria-hidden="true" style={{ top: from(goal) }}>
          {goalFlag(goal, currency)}
        </span>
        {telling !== null && active !== null && (
          <div class="tip" aria-hidden="true" style={tipPlace(active, finds.length)}>
            <b>{telling.title}</b>
            {telling.lines.map((line) => (
              <span key={line}>{line}</span>
            ))}
          </div>
        )}
        <p class="sr" aria-live="polite">
          {spoken}
        </p>
      </div>
      <ul class="rates">
        {finds.map(({ find, row, stopped }) => (
          <li key={find.id}>
            <span class="sr">{find.name}</span>
            {row === null ? (
              <span class="small">{stopped ? STOPPED_NO_FIGURE : ONLY_LEAVING}</span>
            ) : (
              <>
                <span class="num">
                  {rate(row.rate, currency)}
                  <small>/h</small>
                </span>
                <span class="rng">{rateRange(row.p10, row.p90, currency)}</span>
              </>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
