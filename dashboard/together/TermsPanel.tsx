import { Picks } from "../parts/Picks.tsx";
import { setTerms } from "../state/set.ts";
import { currencySign, money } from "../words/money.ts";
import { hours } from "../words/time.ts";
import { amount } from "../words/together.ts";
import { cashLines, hoursLines, slotsLines } from "../words/togetherBudgets.ts";
import { Budget } from "./Budget.tsx";
import { reaches } from "./reaches.ts";
import type { Standing } from "./standing.ts";

const OBJECTIVES = [
  {
    value: "netBenefit",
    label: "What is left after your goal is paid",
    detail: "your own hours count as a cost",
  },
  { value: "margin", label: "Money left", detail: "your own hours cost nothing" },
];

/** What there is to spend on all finds together, and what the set is chosen for. */
export function TermsPanel({ stood, currency }: { stood: Standing | null; currency: string }) {
  const terms = setTerms.terms.value;
  const reach = reaches(stood?.answer ?? null, terms);
  const told = stood?.answer ?? null;
  return (
    <section class="panel terms" aria-labelledby="terms-title">
      <h2 id="terms-title">What you have</h2>
      <p class="small">For all of them together. Kept in this browser.</p>
      <Budget
        budget="hours"
        name="Hours"
        reach={reach.hours}
        unit="h"
        say={hours}
        lines={told === null ? [] : hoursLines(told, currency)}
      />
      <Budget
        budget="cash"
        name="Cash"
        reach={reach.cash}
        before={currencySign(currency)}
        say={(value) => money(value, currency)}
        lines={told === null ? [] : cashLines(told, currency)}
      />
      <Budget
        budget="slots"
        name="Places on the floor"
        reach={reach.slots}
        say={(value) => amount("slots", value, currency)}
        lines={told === null ? [] : slotsLines(told, currency)}
      />
      <Picks
        legend="Choose for the most of"
        choices={OBJECTIVES}
        value={terms.objective}
        onValue={(value) => setTerms.put({ objective: value === "margin" ? "margin" : "netBenefit" })}
        layout="list"
      />
    </section>
  );
}
