import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { Appraisal, Reference } from "../api/types.ts";
import { namesIn } from "../find/names.ts";
import type { Find } from "../finds/find.ts";
import { ALONE } from "../finds/own.ts";
import { isInvented, ownership } from "../finds/ownership.ts";
import { DemoLine } from "../parts/DemoLine.tsx";
import { Heading } from "../parts/Heading.tsx";
import { Trouble } from "../parts/Trouble.tsx";
import { WorkedOut } from "../parts/WorkedOut.tsx";
import { askingOf } from "../state/finds.ts";
import { sellingAskingOf, sellingTerms } from "../state/selling.ts";
import { termsOf } from "../state/terms.ts";
import { WORKING } from "../words/common.ts";
import { uncapital } from "../words/count.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { refusal } from "../words/refusal.ts";
import { planTitle } from "../words/selling.ts";
import { SELLING_PAGE_ANOTHER } from "../words/sellingPage.ts";
import { roadWords } from "../words/sellingRoad.ts";
import { PLAN_NO_PLAN, PLAN_NOT_TO_BE_SOLD, PLAN_NOT_WHOLE, sellingTab } from "../words/sellingTexts.ts";
import { STATE_NAMES } from "../words/states.ts";
import { verdict } from "../words/verdict.ts";
import { MarketPanel } from "./MarketPanel.tsx";
import { NotSold } from "./NotSold.tsx";
import { planGround } from "./planGround.ts";
import { printPlan } from "./printPlan.tsx";
import { RoadNote } from "./RoadNote.tsx";
import { SellingPanels } from "./SellingPanels.tsx";
import { StatePicks } from "./StatePicks.tsx";
import { useAsked } from "./useAsked.ts";
import { useOffer } from "./useOffer.ts";

interface FindSellingProps {
  readonly find: Find;
  readonly known: Reference;
  /** What one more hour must earn. */
  readonly goal: number;
  /** Stands above the plan. */
  readonly children?: ComponentChildren;
}

/** The price plan of one find. */
export function FindSelling({ find, known, goal, children }: FindSellingProps) {
  const asking = askingOf(find.id);
  const planAsking = sellingAskingOf(find.id);
  const answer = asking.answer.value;
  const appraised = asking.answered.value ?? find.body;
  const { seller, bikes } = sellingTerms.kept.value;
  const bike = bikes[find.id] ?? {};
  const entry = useOffer();
  const [shown, setShown] = useState(false);
  const { states, state, ground, question } = planGround({
    find,
    known,
    goal,
    answer,
    appraised,
    terms: { seller, bike },
    offer: entry.made,
  });
  const open = ground?.kind === "open" ? ground : null;
  useAsked(planAsking, question);
  const planFault = open === null ? null : planAsking.fault.value;
  // While a plan is under way the last one stays. Where none comes, that of another state says nothing of this one.
  const isStale = planFault !== null && planAsking.answered.value?.state !== state;
  const plan = open === null || isStale ? null : planAsking.answer.value;
  // What comes with the first plan comes all at once, so that nothing moves.
  const waits = open !== null && plan === null && planFault === null;
  const roadSaid = open === null ? null : roadWords(open);
  const road = roadSaid === null ? "" : `${roadSaid.said} ${roadSaid.because}`;
  const { currency } = known;
  const title =
    plan !== null && open !== null
      ? planTitle(plan.path, { currency: plan.currency, road: open.road, shown })
      : planFault !== null || (answer === null && asking.fault.value !== null)
        ? PLAN_NO_PLAN
        : withoutPlan(
            find,
            answer,
            known,
            termsOf(asking, goal),
            state === undefined,
            ground?.kind === "refused",
          );
  const slow = asking.status.value === "slow" || planAsking.status.value === "slow";
  return (
    <main class="page" id="main">
      <DemoLine own={!isInvented(find)} />
      <p class="crumb">
        <a href="/selling">{PLACE_NAMES.selling}</a> / {find.id === ALONE ? SELLING_PAGE_ANOTHER : find.name}
      </p>
      <p class="eyebrow">
        {find.name}
        <span class="tag">{ownership(find)}</span>
        {state === undefined ? "" : ` ${uncapital(STATE_NAMES[state])}`}
      </p>
      <div class="sellhead" aria-live="polite">
        <Heading title={sellingTab(find.name)}>{title}</Heading>
      </div>
      <p class="working" role="status">
        {slow ? WORKING : ""}
      </p>
      {[
        { key: "appraisal", fault: asking.fault.value, again: asking.again },
        { key: "plan", fault: planFault, again: planAsking.again },
      ].map(
        ({ key, fault, again }) =>
          fault !== null && (
            <Trouble key={key} fault={fault} again={again} say={(field) => refusal(field, known.checks)} />
          ),
      )}
      {children}
      {!waits && states.length > 0 && state !== undefined && (
        <StatePicks
          states={states}
          state={state}
          currency={currency}
          onState={(next) => sellingTerms.putBike(find.id, "state", next)}
        />
      )}
      {!waits && open !== null && <RoadNote ground={open} />}
      {plan === null && planFault?.kind === "refused" && (
        // What was refused may be a term kept from before: without its field nobody could change it.
        <div class="two selling">
          <div class="a">
            <MarketPanel
              id={find.id}
              seller={seller}
              bike={bike}
              month={appraised.workshop?.month}
              plan={null}
              currency={currency}
              fault={planFault}
            />
          </div>
        </div>
      )}
      {answer !== null && plan === null && (
        <NotSold
          find={find}
          answer={answer}
          inPieces={state === undefined}
          why={ground?.kind === "refused" ? ground.why : null}
        />
      )}
      {answer !== null && state !== undefined && plan !== null && open !== null && (
        <SellingPanels
          find={find}
          known={known}
          answer={answer}
          body={appraised}
          state={state}
          plan={plan}
          seller={seller}
          bike={bike}
          entry={entry}
          answered={planAsking.answered.value?.offer ?? null}
          fault={planFault}
          shown={shown}
          onShown={setShown}
          onPrint={() =>
            void printPlan({ plan, shown, title, name: find.name, state, road, invented: isInvented(find) })
          }
          dimmed={planAsking.status.value !== "settled"}
        />
      )}
      {!waits && <WorkedOut askings={plan === null ? [asking] : [asking, planAsking]} />}
    </main>
  );
}

/** The heading while there is no plan, and why there is none. */
function withoutPlan(
  find: Find,
  answer: Appraisal | null,
  known: Reference,
  { goal, price }: ReturnType<typeof termsOf>,
  noState: boolean,
  refused: boolean,
): string {
  if (answer === null) return WORKING;
  if (answer.value === null)
    return verdict(answer, goal, { called: find.called, price, nameOf: namesIn(known).any });
  if (refused) return PLAN_NOT_TO_BE_SOLD;
  return noState ? PLAN_NOT_WHOLE : WORKING;
}
