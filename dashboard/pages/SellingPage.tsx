import { useEffect } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import { withGoal } from "../finds/find.ts";
import { ALONE } from "../finds/own.ts";
import { DemoLine } from "../parts/DemoLine.tsx";
import { Heading } from "../parts/Heading.tsx";
import { WorkedOut } from "../parts/WorkedOut.tsx";
import { AlonePicks } from "../selling/AlonePicks.tsx";
import { FindSelling } from "../selling/FindSelling.tsx";
import { SellingChoice } from "../selling/SellingChoice.tsx";
import { askingOf, finds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { reference } from "../state/reference.ts";
import { route } from "../state/route.ts";
import { aloneFind, sellingTerms } from "../state/selling.ts";
import { WORKING } from "../words/common.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import {
  SELLING_PAGE_ANOTHER,
  SELLING_PAGE_ANOTHER_TITLE,
  SELLING_PAGE_CHANGE,
  SELLING_PAGE_FOUR_ANSWERS,
  SELLING_PAGE_WHAT,
  SELLING_PAGE_WHICH,
} from "../words/sellingPage.ts";
import { Unknown } from "./findStates.tsx";
import "../style/together.css";
import "../style/sale.css";
import "../style/selling.css";

/** What to ask, when to come down, what to accept? */
export function SellingPage() {
  const here = route.value;
  const known = reference.value;
  const hourlyGoal = goal.value;
  const all = finds.value;
  if (here.page !== "selling" || known === null || hourlyGoal === null) return <Waiting />;
  if (here.id === null) {
    return (
      <main class="page" id="main">
        <DemoLine />
        <Heading title={PLACE_NAMES.selling}>{SELLING_PAGE_WHICH}</Heading>
        <SellingChoice finds={all} />
        <WorkedOut askings={all.map(({ id }) => askingOf(id))} />
      </main>
    );
  }
  if (here.id === ALONE) return <Alone known={known} goal={hourlyGoal} />;
  const find = all.find(({ id }) => id === here.id);
  return find === undefined ? <Unknown /> : <FindSelling find={find} known={known} goal={hourlyGoal} />;
}

function Waiting() {
  return (
    <main class="page" id="main">
      <Heading title={PLACE_NAMES.selling}>{WORKING}</Heading>
    </main>
  );
}

/** A bicycle that is none of the finds: four answers, then the plan. */
function Alone({ known, goal: hourlyGoal }: { known: Reference; goal: number }) {
  const find = aloneFind.value;
  const asking = askingOf(ALONE);
  useEffect(() => {
    if (find !== null) asking.ask(withGoal(find.body, hourlyGoal));
  }, [asking, find, hourlyGoal]);
  const picks = <AlonePicks alone={sellingTerms.kept.value.alone} known={known} fault={asking.fault.value} />;
  if (find !== null) {
    return (
      <FindSelling find={find} known={known} goal={hourlyGoal}>
        <details class="alonefold">
          <summary>{SELLING_PAGE_CHANGE}</summary>
          {picks}
        </details>
      </FindSelling>
    );
  }
  return (
    <main class="page" id="main">
      <DemoLine own />
      <p class="crumb">
        <a href="/selling">{PLACE_NAMES.selling}</a> / {SELLING_PAGE_ANOTHER}
      </p>
      <Heading title={SELLING_PAGE_ANOTHER_TITLE}>{SELLING_PAGE_WHAT}</Heading>
      <p class="facts">{SELLING_PAGE_FOUR_ANSWERS}</p>
      {picks}
    </main>
  );
}
