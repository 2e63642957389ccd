import type { SellingPlan } from "../api/types.ts";
import { fineChance } from "./chance.ts";
import { MONTHS } from "./fields.ts";
import { figure } from "./figure.ts";
import { money, roundMoney } from "./money.ts";
import { between, moneyRange } from "./range.ts";

/** A figure of the plan with its name and what goes along with it. */
export interface SellingFact {
  readonly name: string;
  readonly figure: string;
  readonly more: string;
}

/** "3.4 weeks", "1 week". */
export function weeksWords(value: number): string {
  const said = oneDigit(value);
  return said === "1" ? "1 week" : `${said} weeks`;
}

function oneDigit(value: number): string {
  return figure(value, 1);
}

/** "a quick sale at about €190", "broken for parts, about €60", "the €100 you set". */
export function fallbackWords({ kind, amount }: SellingPlan["fallback"], currency: string): string {
  if (kind === "given") return `the ${money(amount, currency)} you set`;
  const about = `about ${money(amount, currency)}`;
  return kind === "parts" ? `broken for parts, ${about}` : `a quick sale at ${about}`;
}

/** What the money of a plan is counted after. */
export function countedWords({ fee }: SellingPlan["market"]): string {
  const none = fee.rate === 0 && fee.fixed === 0;
  return none ? "After haggling, before fees and post." : "After haggling and fees, before post.";
}

/** What the plan comes to: takings, weeks, what happens if it does not sell, what round prices cost, whether to hold it. */
export function sellingFacts(plan: SellingPlan): readonly SellingFact[] {
  const { currency, path, expectedTakings, takings, expectedWeeks, weeks, chanceUnsold } = plan;
  const { roundingCost, fallback } = plan;
  return [
    {
      name: "What it brings",
      figure: money(expectedTakings, currency),
      more: `on average, likely ${moneyRange(takings.p10, takings.p90, currency)}`,
    },
    {
      name: "Until it is gone",
      figure: weeksWords(expectedWeeks),
      more: `on average, likely ${between(oneDigit(weeks.p10), oneDigit(weeks.p90))}`,
    },
    {
      name: `Not sold in ${weeksWords(path.length)}`,
      figure: fineChance(chanceUnsold),
      more: `then ${fallbackWords(fallback, currency)}`,
    },
    {
      name: "What round prices cost",
      figure: roundMoney(roundingCost) < 1 ? "next to nothing" : money(roundingCost, currency),
      more: "against prices to the cent",
    },
    holdFact(plan),
  ];
}

function holdFact({ holdUntil, market, currency }: SellingPlan): SellingFact {
  const name = "Holding it for the season";
  if (market.month === null)
    return { name, figure: "not known", more: "once the month of sale is set, the months ahead are weighed" };
  if (holdUntil === null)
    return { name, figure: "not worth it", more: "no later month brings more than keeping it costs" };
  return {
    name,
    figure: `until ${MONTHS[holdUntil.month - 1] ?? `month ${holdUntil.month}`}`,
    more: `brings about ${money(holdUntil.gain, currency)} more, after what keeping it costs`,
  };
}
