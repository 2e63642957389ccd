import { useEffect } from "preact/hooks";
import { Unfinished } from "../finds/OwnNotes.tsx";
import { DemoLine } from "../parts/DemoLine.tsx";
import { Heading } from "../parts/Heading.tsx";
import { Trouble } from "../parts/Trouble.tsx";
import { WorkedOut } from "../parts/WorkedOut.tsx";
import { WORKING } from "../words/common.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { pricesLeftOut, WHICH_GO_TOGETHER } from "../words/setTexts.ts";
import { withUnbrokenHours } from "../words/togetherSet.ts";
import "../style/together.css";
import { finds } from "../state/finds.ts";
import { reference } from "../state/reference.ts";
import { keepAskingForSet, setAsking, setQuestion } from "../state/set.ts";
import { CostPanel } from "../together/CostPanel.tsx";
import { calledAmong } from "../together/called.ts";
import { HoursPanel } from "../together/HoursPanel.tsx";
import { MeritPanel } from "../together/MeritPanel.tsx";
import { SetPanel } from "../together/SetPanel.tsx";
import { type Standing, standing } from "../together/standing.ts";
import { TermsPanel } from "../together/TermsPanel.tsx";
import { setHeadline } from "../words/together.ts";
import { setRefusal } from "../words/togetherLeft.ts";

/** Which set of finds fits my hours, cash and floor? */
export function TogetherPage() {
  useEffect(keepAskingForSet, []);
  const known = reference.value;
  const stood = standing.value;
  const fault = setAsking.fault.value;
  const status = setAsking.status.value;
  // Below the heading nothing is shown that the answer would push aside.
  const waiting = stood === null && fault === null;
  const dimmed = status !== "settled";
  const charted = stood !== null && stood.rows.length > 0;
  return (
    <>
      <main class="page" id="main">
        <DemoLine />
        <p class="crumb apart">
          <a href="/">{PLACE_NAMES.finds}</a> <a href="/compare">{PLACE_NAMES.compare}</a>
        </p>
        {/* Whoever moves a slider without seeing the page hears the new answer. */}
        <div class="sethead" aria-live="polite">
          <Heading title={PLACE_NAMES.together}>
            {stood === null ? WHICH_GO_TOGETHER : headlineOf(stood)}
          </Heading>
        </div>
        <p class="working" role="status">
          {status === "slow" ? WORKING : ""}
        </p>
        {fault !== null && (
          <Trouble
            fault={fault}
            again={() => setAsking.again()}
            say={(field) => setRefusal(field, finds.value, known?.checks ?? [])}
          />
        )}
        {!waiting && (
          <>
            <Provisos />
            <div class="together">
              {known !== null && <TermsPanel stood={stood} currency={known.currency} />}
              {stood !== null && <SetPanel stood={stood} dimmed={dimmed} />}
            </div>
          </>
        )}
        {charted && (
          <>
            <MeritPanel stood={stood} dimmed={dimmed} />
            <HoursPanel stood={stood} dimmed={dimmed} />
            <CostPanel stood={stood} dimmed={dimmed} />
          </>
        )}
        {known !== null && !waiting && <Unfinished known={known} />}
      </main>
      <WorkedOut askings={[setAsking]} />
    </>
  );
}

function headlineOf({ answer, rows, goal }: Standing): string {
  const next = rows.find(({ find }) => find.id === answer.nextIn?.id);
  const sentence = setHeadline(
    {
      ...answer,
      chosen: rows.filter(({ chosen }) => chosen).map(({ find }) => calledAmong(find)),
      candidates: rows.map(({ find }) => calledAmong(find)),
      nextIn:
        answer.nextIn === null || next === undefined
          ? null
          : { called: calledAmong(next.find), needs: answer.nextIn.needs },
    },
    goal,
    answer.currency,
  );
  return withUnbrokenHours(sentence);
}

/** Where the figures here are not those of a find's own page, and why. */
function Provisos() {
  const pricesLeft = setQuestion.value?.pricesLeft ?? 0;
  if (pricesLeft === 0) return null;
  const used = finds.value[0]?.body.comparables?.length ?? 0;
  return <p class="note">{pricesLeftOut(used - pricesLeft, used)}</p>;
}
