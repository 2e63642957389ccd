import type { SaleState } from "../listing/saleStates.ts";
import { money } from "../words/money.ts";
import { isOwnStep, PLAIN_BIKE, stepMoney, stepWords } from "../words/sale.ts";
import { MIDDLE_OF_RANGE, PLAIN_BICYCLE, thisOne } from "../words/waterfall.ts";
import type { Value } from "./states.ts";
import { isTold, type Step, waterfall } from "./waterfall.ts";

/** A step of a price as it is shown. */
export interface StepRow {
  readonly name: string;
  readonly why: string;
  readonly said: string;
  readonly from: number;
  readonly to: number;
  readonly factor: number | null;
  readonly own: boolean;
  /** The first and the last: a price rather than a step. */
  readonly whole: boolean;
}

/** The rows from a plain bike to this one, the price of either at its end. */
export function stepRows(
  facts: Readonly<Partial<Record<string, string>>>,
  value: Value,
  state: SaleState,
  currency: string,
): readonly StepRow[] {
  const whole = (name: string, why: string, price: number): StepRow => ({
    name,
    why,
    said: money(price, currency),
    from: 0,
    to: price,
    factor: null,
    own: false,
    whole: true,
  });
  // What is left of the small steps may itself read as nothing.
  const steps = waterfall(value, state)
    .filter(isTold)
    .map(({ term, factor, from, to }: Step): StepRow => {
      const words = stepWords(term, state);
      const fact = facts[term];
      return {
        name: fact === undefined ? words.name : `${words.name}: ${fact}`,
        why: words.why,
        said: stepMoney(to - from, currency),
        from,
        to,
        factor,
        own: isOwnStep(term),
        whole: false,
      };
    });
  return [
    whole(PLAIN_BICYCLE, PLAIN_BIKE, value.referencePrice),
    ...steps,
    whole(thisOne(state), MIDDLE_OF_RANGE, value[state]?.p50 ?? 0),
  ];
}
