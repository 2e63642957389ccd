import { useMemo, useRef, useState } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import { Chooser } from "../compare/Chooser.tsx";
import { Comparison, HardlyLooked } from "../compare/Comparison.tsx";
import { LEAST } from "../compare/chosen.ts";
import { type Compared, calledIn, comparedOf } from "../compare/compared.ts";
import { DescribedBlocks } from "../compare/DescribedBlocks.tsx";
import { SaveCsv } from "../compare/SaveCsv.tsx";
import { useWide } from "../compare/useWide.ts";
import { isInvented } from "../finds/ownership.ts";
import { Progress } from "../finds/Progress.tsx";
import { Stopped, Unplaced } from "../finds/Unplaced.tsx";
import { isAsking, type StandingAnswers, useStanding } from "../finds/useStanding.ts";
import { DemoLine } from "../parts/DemoLine.tsx";
import { Heading } from "../parts/Heading.tsx";
import { compared, isChosen } from "../state/compared.ts";
import { askingOf } from "../state/finds.ts";
import { reference } from "../state/reference.ts";
import { termsOf } from "../state/terms.ts";
import { WORKING } from "../words/common.ts";
import {
  COMPARE_ADD_OR_DROP,
  COMPARE_CHOOSE_SET,
  COMPARE_DONE_CHOOSING,
  COMPARE_NONE_OPEN,
  COMPARE_TOO_FEW,
  COMPARE_WOULD_EARN,
} from "../words/compareTexts.ts";
import { compareTitle } from "../words/compareTitle.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import "../compare/compare.css";

/** Which of these few? Two to six finds beside each other, differences first. */
export function ComparePage() {
  const known = reference.value;
  const { answers, goal } = useStanding();
  const finds = useFinds(answers, goal);
  const few = finds.length < LEAST;
  const [choosing, setChoosing] = useState<boolean | null>(null);
  const fewAtFirst = useRef<boolean | null>(null);
  // Below the heading nothing is shown that the answers would push aside.
  if (known === null || goal === null || answers.length === 0) {
    return (
      <main class="page" id="main" aria-busy="true">
        <DemoLine />
        <div class="head">
          <Heading title={PLACE_NAMES.compare}>{WORKING}</Heading>
        </div>
        <Progress />
      </main>
    );
  }
  fewAtFirst.current ??= few;
  const isChoosing = choosing ?? fewAtFirst.current;
  return (
    <main class="page" id="main">
      <DemoLine own={!few && !finds.some(({ find }) => isInvented(find))} />
      <div class="head">
        <Heading title={PLACE_NAMES.compare}>{title(finds, goal, known.currency)}</Heading>
        <div class="acts">
          <a class="btn" href="/together">
            {COMPARE_CHOOSE_SET}
          </a>
          <button
            type="button"
            class="btn quiet"
            aria-expanded={isChoosing}
            aria-controls="chooser"
            onClick={() => setChoosing(!isChoosing)}
          >
            {isChoosing ? COMPARE_DONE_CHOOSING : COMPARE_ADD_OR_DROP}
          </button>
        </div>
      </div>
      {isChoosing && <Chooser answers={answers} goal={goal} known={known} />}
      <Progress />
      {!few && <SideBySide finds={finds} answers={answers} goal={goal} known={known} />}
    </main>
  );
}

interface SideBySideProps extends StandingAnswers {
  readonly finds: readonly Compared[];
  readonly goal: number;
  readonly known: Reference;
}

function SideBySide({ finds, answers, goal, known }: SideBySideProps) {
  // Five and six columns need more room than four.
  const many = finds.length > 4;
  const wide = useWide(many ? 72 : 60);
  return (
    <div class={classes({ compare: true, wide, many, dim: isAsking() })} style={{ "--finds": finds.length }}>
      <div class="warnings">
        {finds.map(
          ({ find, appraisal, stopped }) =>
            stopped && <Stopped key={find.id} find={find} appraisal={appraisal} />,
        )}
      </div>
      <section class="panel" aria-labelledby="figures-title">
        <h2 class="sr" id="figures-title">
          {COMPARE_WOULD_EARN}
        </h2>
        <Comparison finds={finds} goal={goal} known={known} dimmed={isAsking()} wide={wide} />
        <Unplaced answers={inSight(answers)} rows={finds.flatMap(({ row }) => row ?? [])} />
        <SaveCsv finds={finds} goal={goal} known={known} />
      </section>
      <HardlyLooked finds={finds} />
      <DescribedBlocks finds={finds} known={known} />
    </div>
  );
}

/** The names of what holds. */
function classes(holds: Readonly<Record<string, boolean>>): string {
  return Object.keys(holds)
    .filter((name) => holds[name])
    .join(" ");
}

/** The finds side by side that have an answer. Until the user has chosen, they stay while newer answers are under way. */
function useFinds(answers: StandingAnswers["answers"], goal: number | null): readonly Compared[] {
  const held = useRef<readonly string[]>([]);
  const ids = compared.value;
  if (isChosen.value || held.current.length === 0 || !isAsking()) held.current = ids;
  const shown = held.current;
  return useMemo(
    () =>
      shown.flatMap((id) => {
        const one = answers.find(({ find }) => find.id === id);
        if (one === undefined || one.appraisal === null || goal === null) return [];
        return [comparedOf(one.find, one.appraisal, termsOf(askingOf(id), goal))];
      }),
    [answers, shown, goal],
  );
}

function inSight(answers: StandingAnswers["answers"]): StandingAnswers["answers"] {
  return answers.filter(({ find }) => compared.value.includes(find.id));
}

function title(finds: readonly Compared[], goal: number, currency: string): string {
  if (finds.length < LEAST) return COMPARE_TOO_FEW;
  const stopped = finds.filter((one) => one.stopped).map(({ find }) => calledIn(find));
  const rows = finds.flatMap(({ row }) => (row === null ? [] : [row]));
  const told = rows.map(({ find, verdict, misses, p10, p90, hardlyLooked, appraisal }) => ({
    called: calledIn(find),
    leave: verdict === "leave",
    misses,
    p10,
    p90,
    hardlyLooked,
    lookFirst: appraisal.decision.lookFirst !== null,
  }));
  return compareTitle(told, stopped, goal, currency) || COMPARE_NONE_OPEN;
}
