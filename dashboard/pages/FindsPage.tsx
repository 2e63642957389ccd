import { useMemo, useRef } from "preact/hooks";
import type { Appraisal } from "../api/types.ts";
import type { Answered } from "../finds/answered.ts";
import { MarginChart } from "../finds/MarginChart.tsx";
import { OwnTrouble, Unfinished } from "../finds/OwnNotes.tsx";
import { byRate, type FindRow, rowOf } from "../finds/row.ts";
import { Stopped, Unplaced } from "../finds/Unplaced.tsx";
import { DemoLine } from "../parts/DemoLine.tsx";
import { Heading } from "../parts/Heading.tsx";
import { Trouble } from "../parts/Trouble.tsx";
import { askingOf, finds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { reference } from "../state/reference.ts";
import { termsOf } from "../state/terms.ts";
import { headline } from "../words/headline.ts";

/** Which of these earns my evenings? The chart is the list. */
export function FindsPage() {
  const known = reference.value;
  const { answers, goal: hourlyGoal } = useStanding();
  const rows = useRows(answers, hourlyGoal);
  const currency = known?.currency ?? "EUR";
  const stopped = answers.filter(({ appraisal }) => appraisal !== null && appraisal.decision.stop !== null);
  const title =
    hourlyGoal === null || rows.length === 0
      ? "What does an hour on each find earn?"
      : headline(
          rows.map(({ find, beats, misses }) => ({ called: find.called, beats, misses })),
          hourlyGoal,
          currency,
        );
  return (
    <main class="page" id="main">
      <DemoLine />
      <div class="head">
        <Heading title="Finds">{title}</Heading>
        <a class="btn" href="/describe">
          Describe a find
        </a>
      </div>
      <section class="panel" aria-labelledby="chart-title">
        <h2 class="sr" id="chart-title">
          Margin per hour by find
        </h2>
        <p class="small">
          Margin for each hour of your time, on the best course; invented finds, beside any of your own. The
          mark is the long-run rate; the bar holds 8 outcomes in 10.
        </p>
        <Progress />
        {known !== null && hourlyGoal !== null && rows.length > 0 && (
          <MarginChart
            rows={rows}
            goal={hourlyGoal}
            currency={currency}
            reference={known}
            dimmed={isAsking()}
          />
        )}
        {stopped.map(({ find, appraisal }) => (
          <Stopped key={find.id} find={find} appraisal={appraisal as Appraisal} />
        ))}
        <Unplaced answers={answers} rows={rows} />
      </section>
      {known !== null && <Unfinished known={known} />}
      <OwnTrouble />
    </main>
  );
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

interface Standing {
  readonly answers: readonly Answered[];
  readonly goal: number | null;
}

/**
 * The last time that every find was answered or refused, and all answers held for one goal. Until that is so again
 * it stays, so that the list does not jump and no answer for the old goal is held against the new one.
 */
function useStanding(): Standing {
  const stood = useRef<Standing>({ answers: [], goal: null });
  const wished = goal.value;
  const answers = finds.value.map((find) => ({ find, appraisal: askingOf(find.id).answer.value }));
  if (wished === null || answers.length === 0) return stood.current;
  const goals = new Set<number>();
  let open = false;
  for (const { find, appraisal } of answers) {
    const asking = askingOf(find.id);
    const refused = asking.fault.value?.kind === "refused";
    if (appraisal === null) open ||= asking.fault.value === null;
    else if (!refused) goals.add(termsOf(asking, wished).goal);
  }
  if (!open && goals.size <= 1) stood.current = { answers, goal: [...goals][0] ?? wished };
  return stood.current;
}

function isAsking(): boolean {
  return finds.value.some(({ id }) => askingOf(id).status.value !== "settled");
}

/** What is under way, and what went wrong, for all finds together. */
function Progress() {
  const all = finds.value.map(({ id }) => askingOf(id));
  const slow = all.some(({ status }) => status.value === "slow");
  const faults = all.flatMap(({ fault }) => (fault.value === null ? [] : [fault.value]));
  const general = faults.find(({ kind }) => kind !== "refused");
  const again = () => {
    for (const asking of all) if (asking.fault.peek() !== null) asking.again();
  };
  return (
    <>
      <p class="working" role="status">
        {slow ? "Working it out" : ""}
      </p>
      {general !== undefined && <Trouble fault={general} again={again} />}
    </>
  );
}
