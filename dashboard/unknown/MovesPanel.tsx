import { useCallback, useMemo } from "preact/hooks";
import type { Appraisal } from "../api/types.ts";
import { Axis, GoalFlag } from "../charts/Axis.tsx";
import type { BarsSettings } from "../charts/bars.ts";
import { PlotLayer } from "../charts/PlotLayer.tsx";
import type { Place } from "../charts/place.ts";
import { createBarsChart } from "../charts/rowCharts.ts";
import { percent } from "../charts/scale.ts";
import { TableDetails } from "../parts/TableDetails.tsx";
import { goalFlag } from "../words/goal.ts";
import { rate } from "../words/money.ts";
import {
  endsOf,
  endsRange,
  endWords,
  groupName,
  hardlyMoves,
  inputRange,
  MOVES_HEAD,
  movesKey,
  movesSentence,
  movesTitle,
  shareWords,
  WHAT_MOVES_IT,
} from "../words/moves.ts";
import { type Moves, moveBars, movesOf, movesScale } from "./moves.ts";

interface MovesPanelProps {
  readonly appraisal: Appraisal;
  readonly goal: number;
  readonly dimmed: boolean;
}

/** What an hour earns when one thing goes badly or well and the rest as expected. */
export function MovesPanel({ appraisal, goal, dimmed }: MovesPanelProps) {
  const moves = useMemo(() => movesOf(appraisal), [appraisal]);
  if (moves === null) return null;
  const { moving, still, course } = moves;
  const { currency } = appraisal;
  const title = movesTitle(moving);
  return (
    <section class="panel" aria-labelledby="moves-title">
      <h2 id="moves-title">{title}</h2>
      {moving.length > 0 && (
        <>
          <p class="small">{movesKey(course, moves.rate, currency)}</p>
          <Bars moves={moves} title={title} goal={goal} currency={currency} dimmed={dimmed} />
          <TableDetails
            caption={WHAT_MOVES_IT}
            head={MOVES_HEAD}
            rows={moving.map((one) => {
              const [worse, better] = endsOf(one);
              return [
                groupName(one.group),
                endWords(one.group, worse, true, currency),
                endWords(one.group, better, false, currency),
                shareWords(one.share),
              ];
            })}
          />
        </>
      )}
      {still.length > 0 && <p class="small">{hardlyMoves(still)}</p>}
    </section>
  );
}

interface BarsProps {
  readonly moves: Moves;
  readonly title: string;
  readonly goal: number;
  readonly currency: string;
  readonly dimmed: boolean;
}

function Bars({ moves, title, goal, currency, dimmed }: BarsProps) {
  const { moving } = moves;
  const scale = useMemo(() => movesScale(moves, goal, innerWidth < 600 ? 4 : 7), [moves, goal]);
  const settings = useCallback(
    (place: Place, active: number | null): BarsSettings => ({
      bars: moveBars(moves),
      strips: place.strips,
      scale,
      goal,
      dotted: null,
      losses: true,
      active,
      width: place.width,
      height: place.height,
    }),
    [moves, scale, goal],
  );
  return (
    <div class="movesbox">
      <div class="axis flags" aria-hidden="true">
        <GoalFlag at={percent(goal, scale)}>{goalFlag(goal, currency)}</GoalFlag>
      </div>
      <div class={dimmed ? "plotbox dim" : "plotbox"}>
        <ol class="moves">
          {moving.map((one) => {
            const range = inputRange(one, currency);
            return (
              <li key={one.group}>
                <div class="movename">
                  <b>
                    {groupName(one.group)}
                    {range !== "" && <span class="small"> {range}</span>}
                  </b>
                  <span class="small nowrap">{endsRange(one, currency)}</span>
                  <span class="small">{shareWords(one.share)}</span>
                </div>
                <div class="plot" />
              </li>
            );
          })}
        </ol>
        <PlotLayer
          label={movesSentence(title, { standing: moves.rate, goal, currency }, moving)}
          create={createBarsChart}
          settings={settings}
          tellings={moving.map((one) => {
            const [worse, better] = endsOf(one);
            return {
              title: groupName(one.group),
              lines: [
                endWords(one.group, worse, true, currency),
                endWords(one.group, better, false, currency),
                shareWords(one.share),
              ],
              at: percent(better.rate, scale),
            };
          })}
        />
      </div>
      <Axis scale={scale} say={(value) => rate(value, currency)} />
    </div>
  );
}
