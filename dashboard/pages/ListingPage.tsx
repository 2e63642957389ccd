import { useState } from "preact/hooks";
import type { Appraisal, Reference } from "../api/types.ts";
import { Halt } from "../find/Halt.tsx";
import { namesIn } from "../find/names.ts";
import type { Find } from "../finds/find.ts";
import { isInvented, ownership } from "../finds/ownership.ts";
import { defaultState, offeredStates, type SaleState } from "../listing/saleStates.ts";
import type { Vocabulary } from "../ownPrices/vocabulary.ts";
import { DemoLine } from "../parts/DemoLine.tsx";
import { Heading } from "../parts/Heading.tsx";
import { Picks } from "../parts/Picks.tsx";
import { Trouble } from "../parts/Trouble.tsx";
import { SalePanels } from "../sale/SalePanels.tsx";
import { pricedStates, type Value } from "../sale/states.ts";
import { aboutPrice } from "../words/bandLines.ts";
import { askTitle, WHEN_DOWN } from "../words/listingPage.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { SOLD_IN_STATE } from "../words/soldState.ts";
import "../style/sale.css";
import { askingOf, finds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { vocabulary } from "../state/ownPrices.ts";
import { reference } from "../state/reference.ts";
import { route } from "../state/route.ts";
import { termsOf } from "../state/terms.ts";
import { WORKING } from "../words/common.ts";
import { refusal } from "../words/refusal.ts";
import { saleTitle } from "../words/sale.ts";
import { verdict } from "../words/verdict.ts";
import { Unknown, Waiting } from "./findStates.tsx";

/** What to ask for one find, where that figure comes from, and the advert. */
export function ListingPage() {
  const here = route.value;
  const known = reference.value;
  const hourlyGoal = goal.value;
  const words = vocabulary.value;
  if (here.page !== "listing" || known === null || hourlyGoal === null || words === null) return <Waiting />;
  const find = finds.value.find(({ id }) => id === here.id);
  if (find === undefined) return <Unknown />;
  return <Known find={find} known={known} vocabulary={words} goal={hourlyGoal} />;
}

interface KnownProps {
  readonly find: Find;
  readonly known: Reference;
  readonly vocabulary: Vocabulary;
  readonly goal: number;
}

function Known({ find, known, vocabulary: words, goal: wished }: KnownProps) {
  const asking = askingOf(find.id);
  const answer = asking.answer.value;
  const fault = asking.fault.value;
  const { goal: hourlyGoal, price, paid } = termsOf(asking, wished);
  const [picked, setPicked] = useState<SaleState | undefined>(undefined);
  const value = answer?.value ?? null;
  const states = answer === null || value === null ? [] : sellableStates(answer, value);
  const wanted = picked ?? (answer === null ? null : defaultState(answer));
  const state = states.find((one) => one.state === wanted)?.state ?? states[0]?.state;
  const at = `/finds/${encodeURIComponent(find.id)}`;
  const title =
    answer === null
      ? WORKING
      : value === null || state === undefined
        ? verdict(answer, hourlyGoal, { called: find.called, price, nameOf: namesIn(known).any })
        : saleTitle(value, state, answer.currency);
  return (
    <main class="page" id="main">
      <DemoLine own={!isInvented(find)} />
      <p class="crumb">
        <a href="/">{PLACE_NAMES.finds}</a> / <a href={at}>{find.name}</a> / {PLACE_NAMES.listing}
      </p>
      <p class="eyebrow">
        {find.name}
        <span class="tag">{ownership(find)}</span>
      </p>
      <Heading title={askTitle(find.name)}>{title}</Heading>
      {value !== null && (
        <p class="small onward">
          <a href={`/selling/${encodeURIComponent(find.id)}`}>{WHEN_DOWN}</a>
        </p>
      )}
      <p class="working" role="status">
        {asking.status.value === "slow" ? WORKING : ""}
      </p>
      {fault !== null && (
        <Trouble fault={fault} again={asking.again} say={(field) => refusal(field, known.checks)} />
      )}
      {answer !== null && value === null && <Halt appraisal={answer} />}
      {answer !== null && value !== null && state !== undefined && (
        <>
          <div class="statepicks">
            <Picks
              legend={SOLD_IN_STATE}
              choices={states.map((one) => ({
                value: one.state,
                label: one.name,
                detail: aboutPrice(one.band.p50, answer.currency),
              }))}
              value={state}
              onValue={(next) => setPicked(next as SaleState)}
              layout="grid"
            />
          </div>
          <SalePanels
            answer={answer}
            value={value}
            state={state}
            find={find}
            body={asking.answered.value ?? find.body}
            known={known}
            vocabulary={words}
            price={price}
            paid={paid}
            dimmed={asking.status.value !== "settled"}
          />
        </>
      )}
    </main>
  );
}

/** The states with a price whose course is open; where none is, all with a price. */
function sellableStates(answer: Appraisal, value: Value) {
  const priced = pricedStates(value);
  const offered = offeredStates(answer);
  const open = priced.filter(({ state }) => offered.includes(state));
  return open.length > 0 ? open : priced;
}
