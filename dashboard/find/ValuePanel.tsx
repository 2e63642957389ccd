import { useCallback, useMemo } from "preact/hooks";
import type { Appraisal, ValueBand } from "../api/types.ts";
import { Axis } from "../charts/Axis.tsx";
import type { BarsSettings } from "../charts/bars.ts";
import { createBarsChart } from "../charts/barsChart.ts";
import { PlotLayer } from "../charts/PlotLayer.tsx";
import type { Place } from "../charts/place.ts";
import { percent, scaleOver } from "../charts/scale.ts";
import { TableDetails } from "../parts/TableDetails.tsx";
import { money } from "../words/money.ts";
import { moneyRange } from "../words/range.ts";
import { valueTitle } from "../words/titles.ts";

const STATES = [
  ["asFound", "As found"],
  ["madeSafe", "Made safe"],
  ["restored", "Restored"],
  ["parts", "As parts"],
] as const;

/** The states the bike can be sold in. */
function statesOf(value: NonNullable<Appraisal["value"]>): readonly { name: string; band: ValueBand }[] {
  return STATES.flatMap(([state, name]) => {
    const band = value[state];
    return band === null ? [] : [{ name, band }];
  });
}

interface ValuePanelProps {
  readonly value: NonNullable<Appraisal["value"]>;
  readonly currency: string;
  readonly price: number | undefined;
  readonly paid: boolean;
  readonly dimmed: boolean;
}

/** Likely prices by state of the bike. */
export function ValuePanel({ value, currency, price, paid, dimmed }: ValuePanelProps) {
  const states = useMemo(() => statesOf(value), [value]);
  const scale = useMemo(() => {
    const highest = Math.max(...states.map(({ band }) => band.p90), price ?? 0);
    return scaleOver(0, highest, innerWidth < 600 ? 4 : 5);
  }, [states, price]);
  const settings = useCallback(
    (place: Place, active: number | null): BarsSettings => ({
      bars: states.map(({ band }) => ({
        low: band.p10,
        high: band.p90,
        at: band.p50,
        sign: null,
        token: "--ink-2",
        open: false,
        middle: [band.p25, band.p75],
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
    [states, price, scale],
  );
  const dotted = !price ? "" : ` Dotted line: ${money(price, currency)} ${paid ? "paid" : "asked"}.`;
  const range = (band: ValueBand) => moneyRange(band.p10, band.p90, currency);
  return (
    <section class="panel" aria-labelledby="value-title">
      <h2 id="value-title">{valueTitle(value, currency)}</h2>
      <p class="small">
        Likely prices by state, before haggling and fees, from invented demo sales. Pale bar: 8 in 10. Full
        bar: the middle half.{dotted}
      </p>
      {value.extrapolates && <p class="note">Unlike anything in the data, so the range is wide.</p>}
      <div class={dimmed ? "plotbox dim" : "plotbox"}>
        <ol class="values">
          {states.map(({ name, band }) => (
            <li key={name}>
              <div class="vname">
                <b>{name}</b>
                <span>{range(band)}</span>
              </div>
              <div class="plot" />
            </li>
          ))}
        </ol>
        <PlotLayer
          label={`${valueTitle(value, currency)}.`}
          create={createBarsChart}
          settings={settings}
          tellings={states.map(({ name, band }) => ({
            title: name,
            lines: [`about ${money(band.p50, currency)}`, `8 in 10 between ${range(band)}`],
            at: percent(band.p50, scale),
          }))}
        />
      </div>
      <div class="valueaxis">
        <Axis scale={scale} say={(amount) => money(amount, currency)} />
      </div>
      <Drivers drivers={value.drivers} />
      <TableDetails
        caption="Likely price by state"
        head={["State", "Middle", "Half between", "8 in 10 between"]}
        rows={states.map(({ name, band }) => [
          name,
          money(band.p50, currency),
          moneyRange(band.p25, band.p75, currency),
          range(band),
        ])}
      />
    </section>
  );
}

/** What lifts or lowers the price against the average bike, strongest first. */
function Drivers({ drivers }: { drivers: readonly { readonly term: string; readonly factor: number }[] }) {
  if (drivers.length === 0) return null;
  const strongest = [...drivers].sort((a, b) => Math.abs(Math.log(b.factor)) - Math.abs(Math.log(a.factor)));
  return (
    <details>
      <summary>What the price comes from</summary>
      <ul class="pairs">
        {strongest.map(({ term, factor }) => (
          <li key={term}>
            <span>{term}</span>
            <span>
              {"\u00d7"} {factor.toFixed(2)}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}
