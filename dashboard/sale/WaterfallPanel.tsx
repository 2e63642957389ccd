import { useCallback, useMemo } from "preact/hooks";
import { Axis } from "../charts/Axis.tsx";
import type { Bar, BarsSettings } from "../charts/bars.ts";
import { PlotLayer } from "../charts/PlotLayer.tsx";
import type { Place } from "../charts/place.ts";
import { createBarsChart } from "../charts/rowCharts.ts";
import { percent, scaleOver } from "../charts/scale.ts";
import type { SaleState } from "../listing/saleStates.ts";
import { TableDetails } from "../parts/TableDetails.tsx";
import { written } from "../words/figure.ts";
import { money } from "../words/money.ts";
import { waterfallTitle } from "../words/sale.ts";
import {
  priceSoFar,
  stepTold,
  WATERFALL_ALL_INVENTED,
  WATERFALL_CAPTION,
  WATERFALL_FACTS,
  WATERFALL_HEAD,
  WATERFALL_SOME_YOURS,
  WATERFALL_YOURS,
} from "../words/waterfall.ts";
import type { Value } from "./states.ts";
import { type StepRow, stepRows } from "./stepRows.ts";

interface WaterfallPanelProps {
  /** What is said of the bike, by the step it bears on: "tandem, mid tier". */
  readonly facts: Readonly<Partial<Record<string, string>>>;
  readonly value: Value;
  readonly state: SaleState;
  readonly currency: string;
  readonly dimmed: boolean;
}

/** How the price of a plain bike becomes that of this one, step by step. */
export function WaterfallPanel({ facts, value, state, currency, dimmed }: WaterfallPanelProps) {
  const rows = useMemo(() => stepRows(facts, value, state, currency), [facts, value, state, currency]);
  const scale = useMemo(() => {
    const highest = Math.max(...rows.map(({ from, to }) => Math.max(from, to)));
    return scaleOver(0, highest, innerWidth < 600 ? 4 : 5);
  }, [rows]);
  const settings = useCallback(
    (place: Place, active: number | null): BarsSettings => ({
      bars: rows.map(barOf),
      strips: place.strips,
      scale,
      goal: null,
      dotted: null,
      losses: false,
      active,
      width: place.width,
      height: place.height,
    }),
    [rows, scale],
  );
  const title = waterfallTitle(value, state, currency);
  return (
    <section class="panel" aria-labelledby="steps-title">
      <h2 id="steps-title">{title}</h2>
      <p class="small">{WATERFALL_FACTS}</p>
      <div class={dimmed ? "plotbox dim" : "plotbox"}>
        <ol class="waterfall">
          {rows.map(({ name, why, said, own, whole }) => (
            <li key={name} class={whole ? "whole" : ""}>
              <div class="stepname">
                <b>{name}</b>
                {own && <span class="tag">{WATERFALL_YOURS}</span>}
                <span class="small">{why}</span>
              </div>
              <b class="stepsaid">{said}</b>
              <div class="plot" />
            </li>
          ))}
        </ol>
        <PlotLayer
          label={`${title}.`}
          create={createBarsChart}
          settings={settings}
          tellings={rows.map(({ name, why, said, to }) => ({
            title: stepTold(name, said),
            lines: [why, priceSoFar(to, currency)],
            at: percent(to, scale),
          }))}
        />
      </div>
      <div class="stepaxis">
        <Axis scale={scale} say={(amount) => money(amount, currency)} />
      </div>
      <p class="small">{value.ownShare > 0 ? WATERFALL_SOME_YOURS : WATERFALL_ALL_INVENTED}</p>
      <TableDetails
        caption={WATERFALL_CAPTION}
        head={WATERFALL_HEAD}
        rows={rows.map(({ name, said, factor, to, whole }) => [
          name,
          whole ? "" : said,
          factor === null
            ? ""
            : `\u00d7\u00a0${written(factor, { minimumFractionDigits: 2, maximumFractionDigits: 2 })}`,
          money(to, currency),
        ])}
      />
    </section>
  );
}

function barOf({ from, to, whole }: StepRow): Bar {
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  const fell = to < from;
  return {
    low,
    high,
    at: to,
    sign: null,
    token: "--ink-2",
    open: false,
    ...(fell ? { hatched: true } : { middle: [low, high] as const }),
    ...(whole ? { middle: [low, high] as const } : {}),
  };
}
