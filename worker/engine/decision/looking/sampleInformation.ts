import type { Money, Probability } from "../../quantity.ts";

/** One answer that a look may give, and what each action is worth then. Actions stand in the same order in every answer. */
export interface Answer {
  readonly chance: Probability;
  /** To whoever knows the answer before choosing; null where the action is closed then. */
  readonly known: readonly (Money | null)[];
  /** To whoever chose the action without knowing, the answer showing itself on the way. */
  readonly unknowing: readonly (Money | null)[];
}

/**
 * Expected value of sample information: what choosing after the answer is worth beyond choosing before it,
 * sum over answers P(l) max_a known(a, l) - max_a sum P(l) unknowing(a, l). Where knowing changes nothing but the choice, `unknowing` is `known`. Whoever
 * knows may always do as if not knowing, so that an unknowing worth counts at most as the best known one, and the value is never below 0.
 * Source: Raiffa & Schlaifer, Applied Statistical Decision Theory (1961), chapter 4.
 * @param answers their chances sum to 1; an action that is null in all of them may not be chosen beforehand
 * @returns money, at least 0
 */
export function sampleInformation(answers: readonly Answer[]): Money {
  const actions = answers[0]?.unknowing.length ?? 0;
  const before = new Float64Array(actions);
  const may = new Uint8Array(actions);
  let after = 0;
  for (const { chance, known, unknowing } of answers) {
    const best = bestOf(known);
    after += chance * best;
    for (let action = 0; action < actions; action++) {
      const worth = unknowing[action]!;
      if (worth !== null) may[action] = 1;
      before[action]! += chance * Math.min(best, worth ?? best);
    }
  }
  let now = Number.NEGATIVE_INFINITY;
  for (let action = 0; action < actions; action++) if (may[action]) now = Math.max(now, before[action]!);
  return now === Number.NEGATIVE_INFINITY ? 0 : Math.max(0, after - now);
}

/** The highest of the worths that are there. */
export function bestOf(worths: readonly (Money | null)[]): Money {
  let best = Number.NEGATIVE_INFINITY;
  for (const worth of worths) if (worth !== null && worth > best) best = worth;
  return best;
}
