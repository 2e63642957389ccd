import { useCallback, useMemo } from "preact/hooks";
import type { CourseId } from "../api/types.ts";
import { edgeOf, GoalFlag } from "../charts/Axis.tsx";
import type { BarsSettings } from "../charts/bars.ts";
import { PlotLayer } from "../charts/PlotLayer.tsx";
import type { Place } from "../charts/place.ts";
import { createBarsChart } from "../charts/rowCharts.ts";
import { percent, rateScale } from "../charts/scale.ts";
import { COURSE_PATH, COURSE_TOKEN } from "../signs/shapes.ts";
import { goalFlag } from "../words/goal.ts";
import { rate } from "../words/money.ts";
import { barSentence } from "../words/rateBar.ts";

/** One range with its goal. */
export function RateBar(props: {
  figures: { readonly rate: number; readonly p10: number; readonly p90: number };
  goal: number;
  currency: string;
  course: CourseId;
  open: boolean;
}) {
  const { figures, goal, currency, course, open } = props;
  const scale = useMemo(() => rateScale([figures], goal, 4), [figures, goal]);
  const settings = useCallback(
    (place: Place): BarsSettings => ({
      bars: [
        {
          low: figures.p10,
          high: figures.p90,
          at: figures.rate,
          sign: COURSE_PATH[course],
          token: COURSE_TOKEN[course],
          open,
        },
      ],
      strips: place.strips,
      scale,
      goal,
      dotted: null,
      losses: true,
      active: null,
      width: place.width,
      height: place.height,
    }),
    [figures, goal, course, open, scale],
  );
  const label = barSentence(figures, goal, currency);
  return (
    <div class="ratebar">
      <div class="plotbox">
        <div class="plot" />
        <PlotLayer label={label} create={createBarsChart} settings={settings} tellings={NO_TELLINGS} quiet />
      </div>
      <div class="axis under" aria-hidden="true">
        {scale.ticks.map((tick) => {
          const at = percent(tick, scale);
          const near = Math.abs(at - percent(goal, scale)) < 30;
          return near ? null : (
            <span key={tick} class={edgeOf(at)} style={{ left: `${at}%` }}>
              {rate(tick, currency)}
            </span>
          );
        })}
        <GoalFlag at={percent(goal, scale)}>{goalFlag(goal, currency)}</GoalFlag>
      </div>
    </div>
  );
}

const NO_TELLINGS = [null];
