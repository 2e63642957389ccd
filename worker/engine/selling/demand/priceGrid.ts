import type { Money } from "../../quantity.ts";

/** Below a price, asking prices are multiples of the step. */
export interface PriceStep {
  readonly below: Money;
  readonly step: Money;
}

/** Keeps a price that rounding has moved off its multiple on it. */
const ROUNDING = 1e-9;

/**
 * The asking prices that people write, rising, from the highest not above `lowest` to the lowest not below `highest`. Above the last row the steps of the last
 * two come again ten, a hundred times as large; below the first step, a tenth as large.
 * @param steps rising; the last two rows span a factor of ten
 */
export function writtenPrices(steps: readonly PriceStep[], lowest: Money, highest: Money): readonly Money[] {
  const first = stepAt(steps, lowest);
  const prices = [Math.max(1, Math.floor(lowest / first + ROUNDING)) * first];
  for (let price = prices[0]!; price < highest; prices.push(price)) {
    const step = stepAt(steps, price);
    price = (Math.round(price / step) + 1) * step;
  }
  return prices;
}

function stepAt(steps: readonly PriceStep[], price: Money): Money {
  if (price < steps[0]!.step * (1 - ROUNDING)) return stepAt(steps, 10 * price) / 10;
  const row = steps.find(({ below }) => price < below * (1 - ROUNDING));
  return row ? row.step : 10 * stepAt(steps.slice(-2), price / 10);
}
