import type { Money, Probability } from "../../quantity.ts";

/** One answer that a look may give. */
export interface Answer {
  readonly chance: Probability;
  /** Worth of the action that is chosen by whoever knows the answer. */
  readonly chosen: Money;
  /** Worth, this answer being the case, of the action that is taken without asking. */
  readonly kept: Money;
}

/**
 * Expected value of sample information: what choosing after the answer is worth beyond choosing before it, the sum over answers of
 * P(l) (max_a U(a, l) - U(a0, l)), with a0 best without asking. Whoever knows may do as if not knowing, so that no answer counts below 0.
 * Source: Raiffa & Schlaifer, Applied Statistical Decision Theory (1961), chapter 4.
 * @returns money, at least 0
 */
export function sampleInformation(answers: readonly Answer[]): Money {
  let sum = 0;
  for (const { chance, chosen, kept } of answers) sum += chance * Math.max(0, chosen - kept);
  return sum;
}
