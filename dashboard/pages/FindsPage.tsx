import { useMemo } from "preact/hooks";
import type { Appraisal, Reference } from "../api/types.ts";
import type { Answered } from "../finds/answered.ts";
import { MarginChart } from "../finds/MarginChart.tsx";
import { OwnTrouble, Unfinished } from "../finds/OwnNotes.tsx";
import { Progress } from "../finds/Progress.tsx";
import { byRate, type FindRow, rowOf } from "../finds/row.ts";
import { Stopped, Unplaced } from "../finds/Unplaced.tsx";
import { isAsking, useStanding } from "../finds/useStanding.ts";
import { DemoLine } from "../parts/DemoLine.tsx";
import { Heading } from "../parts/Heading.tsx";
import { useLater } from "../parts/useLater.ts";
import { finds } from "../state/finds.ts";
import { reference } from "../state/reference.ts";
import {
  FINDS_BLANK_SHEET,
  FINDS_CHART,
  FINDS_DESCRIBE,
  FINDS_LOOK,
  FINDS_QUESTION,
} from "../words/findsPage.ts";
import { headline } from "../words/headline.ts";
import { MARGIN_BY_FIND } from "../words/marginChart.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";

/** Which of these earns my evenings? The chart is the list. */
export function FindsPage() {
  const known = reference.value;
  const { answers, goal: hourlyGoal } = useStanding();
  const rows = useRows(answers, hourlyGoal);
  // Below the heading nothing is shown that the answers would push aside.
  const waiting = answers.length === 0;
  const stopped = answers.filter(({ appraisal }) => appraisal !== null && appraisal.decision.stop !== null);
  const title =
    known === null || hourlyGoal === null || rows.length === 0
      ? FINDS_QUESTION
      : headline(
          rows.map(({ find, beats, misses }) => ({ called: find.called, beats, misses })),
          hourlyGoal,
          known.currency,
        );
  return (
    <main class="page" id="main" aria-busy={waiting}>
      <DemoLine />
      <div class="head">
        <Heading title={PLACE_NAMES.finds}>{title}</Heading>
        {!waiting && (
          <div class="acts">
            <a class="btn" href="/spot">
              {FINDS_LOOK}
            </a>
            <a class="btn quiet" href="/describe">
              {FINDS_DESCRIBE}
            </a>
            <a class="btn quiet" href="/together">
              {PLACE_NAMES.together}
            </a>
          </div>
        )}
      </div>
      {waiting ? (
        <Progress />
      ) : (
        <section class="panel" aria-labelledby="chart-title">
          <h2 class="sr" id="chart-title">
            {MARGIN_BY_FIND}
          </h2>
          <p class="small">{FINDS_CHART}</p>
          <Progress />
          {known !== null && hourlyGoal !== null && rows.length > 0 && (
            <MarginChart
              rows={rows}
              goal={hourlyGoal}
              currency={known.currency}
              reference={known}
              dimmed={isAsking()}
            />
          )}
          {stopped.map(({ find, appraisal }) => (
            <Stopped key={find.id} find={find} appraisal={appraisal as Appraisal} />
          ))}
          <Unplaced answers={answers} rows={rows} />
        </section>
      )}
      {known !== null && !waiting && <Unfinished known={known} />}
      <OwnTrouble />
      {!waiting && (
        <p class="small onward">
          <a href="/sheets">{FINDS_BLANK_SHEET}</a>
        </p>
      )}
      {known !== null && !waiting && <Files known={known} />}
    </main>
  );
}

const filesPanel = () => import("../share/FilesPanel.tsx");

/** Own finds out to a file and in from one; fetched after the chart. */
function Files({ known }: { known: Reference }) {
  const { loaded } = useLater(filesPanel);
  return loaded === null ? null : <loaded.FilesPanel known={known} />;
}

function useRows(answers: readonly Answered[], hourlyGoal: number | null): readonly FindRow[] {
  const appraisals = answers.map(({ appraisal }) => appraisal);
  // The rows follow the answers, the finds and the goal.
  return useMemo(() => {
    if (hourlyGoal === null) return [];
    return answers
      .flatMap(({ find, appraisal }) => {
        const row = appraisal === null ? null : rowOf(find, appraisal, hourlyGoal);
        return row === null ? [] : [row];
      })
      .sort(byRate);
  }, [hourlyGoal, finds.value, ...appraisals]);
}
