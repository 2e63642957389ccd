import type { Money, Probability } from "../quantity.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { log } from "../statistics/elementary/log.ts";
import { cubed, squared } from "../statistics/elementary/powers.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import type { Branch, Sale } from "./branch.ts";

/** What may be sold together, as the middle of prices has it. */
export interface Lot {
  readonly chance: Probability;
  /** What it brings on average. */
  readonly takings: Money;
  /** Of what it brings: outcomes near each other are one lot. */
  readonly variance: number;
  readonly third: number;
}

/** Something that is sold or not, on its own. */
export interface Chanced {
  readonly chance: Probability;
  readonly net: Money;
}

/**
 * Outcomes as near as this, over the spread that the price gives them, become one lot of the same mean, variance and skewness: what the price smooths so far
 * is not told apart by a thousandth of probability (`npm run proof`).
 */
const NEAR = 0.4;
/** A branch less likely than this is one lot: how its outcomes lie then moves no chance by more than two thousandths. */
const SELDOM: Probability = 0.04;

/**
 * What pieces that sell or do not may bring together: every one of the outcomes (128 for seven pieces), those that are near each other gathered.
 * @param logSd spread of the price that all of them share
 * @returns lots that rise, their chances summing to 1; one that brings nothing stands alone
 */
export function lotsOf(pieces: readonly Chanced[], logSd: number): readonly Lot[] {
  let outcomes: Lot[] = [{ chance: 1, takings: 0, variance: 0, third: 0 }];
  for (const { chance, net } of pieces) {
    const sold = outcomes.map((one) => ({ ...one, chance: one.chance * chance, takings: one.takings + net }));
    outcomes = outcomes.map((one) => ({ ...one, chance: one.chance * (1 - chance) })).concat(sold);
  }
  outcomes = outcomes.filter(({ chance }) => chance > 0).sort((a, b) => a.takings - b.takings);
  const lots: Lot[] = [];
  const middle = outcomes.reduce((sum, { chance, takings }) => sum + chance * takings, 0);
  let from = 0;
  while (from < outcomes.length) {
    const least = outcomes[from]!.takings;
    // Small outcomes are smoothed by their neighbours as well.
    const near = NEAR * logSd * Math.max(least, least > 0 ? middle / 2 : 0);
    let to = from + 1;
    while (to < outcomes.length && outcomes[to]!.takings <= least + near) to++;
    lots.push(gathered(outcomes, from, to));
    from = to;
  }
  return lots;
}

function gathered(outcomes: readonly Lot[], from: number, to: number): Lot {
  let chance = 0;
  let takings = 0;
  for (let i = from; i < to; i++) {
    chance += outcomes[i]!.chance;
    takings += outcomes[i]!.chance * outcomes[i]!.takings;
  }
  takings /= chance;
  let variance = 0;
  let third = 0;
  for (let i = from; i < to; i++) {
    const one = outcomes[i]!;
    const off = one.takings - takings;
    variance += (one.chance / chance) * (one.variance + squared(off));
    third += (one.chance / chance) * (one.third + 3 * off * one.variance + cubed(off));
  }
  return { chance, takings, variance, third };
}

/**
 * A branch once for each lot that may be sold in it. What the outcomes of a lot differ by moves with the price: it goes with the money out, at the price's
 * mean square and cube.
 */
export function byLots(branch: Branch, sale: Sale | null): readonly Branch[] {
  if (!sale?.lots) return [branch];
  const { price, share, lots } = sale;
  const mean = share * logNormalMean(price);
  const square = exp(squared(price.logSd));
  const apart = branch.chance < SELDOM ? [gathered(lots, 0, lots.length)] : lots;
  return apart.map(({ chance, takings, variance, third }): Branch => {
    const { outlay } = branch;
    if (takings === 0) return { ...branch, chance: branch.chance * chance, price: null, share: 0 };
    return {
      ...branch,
      chance: branch.chance * chance,
      price: { ...price, logMedian: price.logMedian + log(takings / mean) },
      outlay: {
        mean: outlay.mean,
        variance: outlay.variance + square * variance,
        // Takings that fail count as money out, so the sign turns.
        third: outlay.third - cubed(square) * third,
      },
    };
  });
}
