import type { SetTotal } from "./comparison.ts";
import type { HoursTogether } from "./hoursTogether.ts";
import { marginTogether } from "./marginTogether.ts";
import type { Taken } from "./taken.ts";

/** What the set comes to, all finds counted. */
export function setTotal(taken: readonly Taken[], used: readonly number[], hours: HoursTogether): SetTotal {
  const margin = marginTogether(taken);
  const [hoursP10, hoursP50, hoursP80, hoursP90] = hours.quantiles([0.1, 0.5, 0.8, 0.9]);
  return {
    netBenefit: taken.reduce((sum, { option }) => sum + option.course.expected.netBenefit, 0),
    margin: margin.mean,
    marginP10: margin.quantile(0.1),
    marginP90: margin.quantile(0.9),
    hours: used[0]!,
    hoursP10: hoursP10!,
    hoursP50: hoursP50!,
    hoursP80: hoursP80!,
    hoursP90: hoursP90!,
    cash: used[1]!,
    slots: used[2]!,
  };
}
