import { useCallback, useMemo } from "preact/hooks";
import { Axis } from "../charts/Axis.tsx";
import type { BarsSettings } from "../charts/bars.ts";
import { PlotLayer } from "../charts/PlotLayer.tsx";
import type { Place } from "../charts/place.ts";
import { createBarsChart } from "../charts/rowCharts.ts";
import { scaleOver } from "../charts/scale.ts";
import { money } from "../words/money.ts";
import { threeMoreTitle, widthWords } from "../words/sale.ts";
import { NOW, threeMoreFacts, WITH_THREE } from "../words/threeMore.ts";
import type { Value } from "./states.ts";

/** What three more sales of bikes like this would do to the range. */
export function ThreeMorePanel({ value, currency }: { value: Value; currency: string }) {
  const { threeMore } = value;
  const ranges = useMemo(
    () => [
      { name: NOW, ...threeMore.now },
      { name: WITH_THREE, ...threeMore.after },
    ],
    [threeMore],
  );
  const scale = useMemo(
    () => scaleOver(0, Math.max(...ranges.map(({ p90 }) => p90)), innerWidth < 600 ? 4 : 5),
    [ranges],
  );
  const settings = useCallback(
    (place: Place): BarsSettings => ({
      bars: ranges.map(({ p10, p90 }) => ({
        low: p10,
        high: p90,
        at: Math.sqrt(p10 * p90),
        sign: null,
        token: "--ink-2",
        open: false,
      })),
      strips: place.strips,
      scale,
      goal: null,
      dotted: null,
      losses: false,
      active: null,
      width: place.width,
      height: place.height,
    }),
    [ranges, scale],
  );
  const title = threeMoreTitle(threeMore);
  return (
    <section class="panel" aria-labelledby="more-title">
      <h2 id="more-title">{title}</h2>
      <p class="small">{threeMoreFacts(threeMore.state)}</p>
      <div class="plotbox">
        <ol class="ranges">
          {ranges.map((range) => (
            <li key={range.name}>
              <b>{range.name}</b>
              <span>{widthWords(range, currency)}</span>
              <div class="plot" />
            </li>
          ))}
        </ol>
        <PlotLayer
          quiet
          label={`${title}. ${ranges.map((range) => `${range.name}: ${widthWords(range, currency)}`).join(". ")}.`}
          create={createBarsChart}
          settings={settings}
          tellings={[null, null]}
        />
      </div>
      <Axis scale={scale} say={(amount) => money(amount, currency)} />
    </section>
  );
}
