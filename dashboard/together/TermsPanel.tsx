import { Picks } from "../parts/Picks.tsx";
import { setTerms } from "../state/set.ts";
import type { BudgetName } from "../state/setTerms.ts";
import { currencySign, money } from "../words/money.ts";
import { SET_CHOOSE_FOR, SET_FOR_ALL, SET_HAVE, SET_PLACES } from "../words/setTexts.ts";
import { hours } from "../words/time.ts";
import { amount } from "../words/together.ts";
import { cashLines, hoursLines, slotsLines } from "../words/togetherBudgets.ts";
import { overrunWords } from "../words/togetherOverrun.ts";
import { CASH, HOURS, OBJECTIVE_WORDS } from "../words/togetherTerms.ts";
import { Budget } from "./Budget.tsx";
import { reaches } from "./reaches.ts";
import type { Standing } from "./standing.ts";

const OBJECTIVES = [
  { value: "netBenefit", ...OBJECTIVE_WORDS.netBenefit },
  { value: "margin", ...OBJECTIVE_WORDS.margin },
];

/** What there is to spend on all finds together, and what the set is chosen for. */
export function TermsPanel({ stood, currency }: { stood: Standing | null; currency: string }) {
  const terms = setTerms.terms.value;
  const reach = reaches(stood?.answer ?? null, terms);
  const answer = stood?.answer ?? null;
  const linesOf = (budget: BudgetName, lines: typeof hoursLines) => {
    const overrun = answer?.overruns.find((one) => one.budget === budget);
    if (answer === null) return [];
    return overrun === undefined ? lines(answer, currency) : [overrunWords(overrun, currency)];
  };
  return (
    <section class="panel terms" aria-labelledby="terms-title">
      <h2 id="terms-title">{SET_HAVE}</h2>
      <p class="small">{SET_FOR_ALL}</p>
      <Budget
        budget="hours"
        name={HOURS}
        reach={reach.hours}
        unit="h"
        say={hours}
        lines={linesOf("hours", hoursLines)}
      />
      <Budget
        budget="cash"
        name={CASH}
        reach={reach.cash}
        before={currencySign(currency)}
        say={(value) => money(value, currency)}
        lines={linesOf("cash", cashLines)}
      />
      <Budget
        budget="slots"
        name={SET_PLACES}
        reach={reach.slots}
        say={(value) => amount("slots", value, currency)}
        lines={linesOf("slots", slotsLines)}
      />
      <Picks
        legend={SET_CHOOSE_FOR}
        choices={OBJECTIVES}
        value={terms.objective}
        onValue={(value) => setTerms.put({ objective: value === "margin" ? "margin" : "netBenefit" })}
        layout="list"
      />
    </section>
  );
}
