import { useCallback, useMemo } from "preact/hooks";
import { Axis } from "../charts/Axis.tsx";
import type { BarsSettings, Dot } from "../charts/bars.ts";
import { PlotLayer } from "../charts/PlotLayer.tsx";
import type { Place } from "../charts/place.ts";
import { createBarsChart } from "../charts/rowCharts.ts";
import { percent, scaleOver } from "../charts/scale.ts";
import type { SaleState } from "../listing/saleStates.ts";
import { bandLines } from "../words/bandLines.ts";
import { money } from "../words/money.ts";
import { moneyRange } from "../words/range.ts";
import type { PricedState } from "./states.ts";

/** Prices of the user's own, to be drawn under the state they speak for. */
export interface OwnDots {
  readonly state: SaleState;
  readonly dots: readonly Dot[];
  /** What is told of them beside the state's range. */
  readonly told: readonly string[];
}

interface BandChartProps {
  readonly label: string;
  readonly states: readonly PricedState[];
  readonly currency: string;
  /** Drawn as a dotted line. */
  readonly price: number | undefined;
  readonly own?: OwnDots | undefined;
  readonly dimmed: boolean;
}

/** A price this many times the highest range would squeeze all else: it is left beyond the axis. */
const FAR = 1.25;

/** Whether a price lies too far above all ranges to stand on their axis. */
export function isBeyond(
  value: number,
  states: readonly Pick<PricedState, "band">[],
  price: number | undefined,
): boolean {
  return value > Math.max(...states.map(({ band }) => band.p90), price ?? 0) * FAR;
}

/** Likely prices by state: 8 in 10 pale, the middle half full, a tick at the middle. */
export function BandChart({ label, states, currency, price, own, dimmed }: BandChartProps) {
  const scale = useMemo(() => {
    const highest = Math.max(...states.map(({ band }) => band.p90), price ?? 0);
    const near = (own?.dots ?? [])
      .map(({ value }) => value)
      .filter((value) => !isBeyond(value, states, price));
    return scaleOver(0, Math.max(highest, ...near), innerWidth < 600 ? 4 : 5);
  }, [states, price, own]);
  const settings = useCallback(
    (place: Place, active: number | null): BarsSettings => ({
      bars: states.map(({ state, band }) => ({
        low: band.p10,
        high: band.p90,
        at: band.p50,
        sign: null,
        token: "--ink-2",
        open: false,
        middle: [band.p25, band.p75],
        ...(own?.state === state ? { dots: own.dots } : {}),
      })),
      strips: place.strips,
      scale,
      goal: null,
      dotted: price || null,
      losses: false,
      active,
      width: place.width,
      height: place.height,
    }),
    [states, price, scale, own],
  );
  return (
    <>
      <div class={dimmed ? "plotbox dim" : "plotbox"}>
        <ol class="values">
          {states.map(({ state, name, band }) => (
            <li key={state}>
              <div class="vname">
                <b>{name}</b>
                <span>{moneyRange(band.p10, band.p90, currency)}</span>
              </div>
              <div class={own?.state === state && own.dots.length > 0 ? "plot dotted" : "plot"} />
            </li>
          ))}
        </ol>
        <PlotLayer
          label={label}
          create={createBarsChart}
          settings={settings}
          tellings={states.map(({ state, name, band }) => ({
            title: name,
            lines: [...bandLines(band, currency), ...(own?.state === state ? own.told : [])],
            at: percent(band.p50, scale),
          }))}
        />
      </div>
      <div class="valueaxis">
        <Axis scale={scale} say={(amount) => money(amount, currency)} />
      </div>
    </>
  );
}
