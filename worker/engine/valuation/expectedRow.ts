import type { Probability } from "../quantity.ts";
import { type CoreMoments, coreMoments } from "./coreMoments.ts";
import { addMarginal, type Outcome, outcomesOf } from "./marginal.ts";
import { originalityEntries, stateEntries } from "./rowEntries.ts";
import { PRESENTATIONS } from "./saleDescription.ts";
import { type KnownDescription, statesOf } from "./unknowns.ts";
import type { ValueLayout } from "./valueLayout.ts";
import type { MarketShares } from "./valueTables.ts";

/** The mean row of the bikes that a description may stand for. */
export interface ExpectedRow {
  readonly x: Float64Array;
  /** Variance of log price between those bikes, under the given coefficients. */
  readonly variance: number;
  /** Mean square of the spread's multiple: above 1 where the bike may be collectable. */
  readonly squaredSpread: number;
  /** Chance that the bike rides. */
  readonly rides: Probability;
}

/**
 * Averages the regression's row over all that is not known of a bike, by the market's shares: first and second moments of the mixture, which is
 * what a linear model asks for. Where everything is known it is the known bike's row, with no variance.
 * @param coreOf kind, tier, era and material, summed (coreMoments); given by whoever reads many bikes and keeps the sums
 */
export function expectedRow(
  layout: ValueLayout,
  coefficients: Float64Array,
  shares: MarketShares,
  known: KnownDescription,
  coreOf: (known: KnownDescription) => CoreMoments = (one) => coreMoments(layout, coefficients, shares, one),
): ExpectedRow {
  const core = coreOf(known);
  const x = core.x.slice();
  const write = (outcomes: readonly Outcome[], weight: Probability) =>
    addMarginal(x, coefficients, outcomes, weight);
  const states = statesOf(known, layout.design, shares);
  let rides = 0;
  for (const { what, chance } of states) if (what.kind === "rides") rides += chance;
  x[layout.intercept] = 1;
  x[layout.market] = 1;

  let variance = core.within;
  for (const outcomes of alwaysUnknown(layout, shares, known)) variance += write(outcomes, 1).variance;
  let shownMean = 0;
  for (const outcomes of shownUnknown(layout, shares, known)) {
    const { mean, variance: own } = write(outcomes, rides);
    shownMean += mean;
    variance += rides * own;
  }

  // Mean and mean square of log price over kind, tier, era, material and state.
  let [mean, square] = [0, 0];
  for (const { tier, interest, chance, sum, square: ownSquare } of core.cells) {
    const presentations = presentationsOf(layout, shares, interest);
    for (const { what: state, chance: ofState } of states) {
      const weight = chance * ofState;
      const entries = stateEntries(layout, tier, interest, state);
      let effect = write([{ chance: 1, entries }], weight).mean;
      if (state.kind === "rides") {
        const shown = write(presentations, weight);
        effect += shownMean + shown.mean;
        variance += weight * shown.variance;
      }
      mean += ofState * (sum + chance * effect);
      square += ofState * (ownSquare + 2 * effect * sum + chance * effect * effect);
    }
  }
  return {
    x,
    variance: variance + Math.max(0, square - mean * mean),
    squaredSpread: core.squaredSpread,
    rides,
  };
}

/** What is open on any bike: size, season, desirability. */
function alwaysUnknown(
  layout: ValueLayout,
  shares: MarketShares,
  known: KnownDescription,
): readonly (readonly Outcome[])[] {
  const months = layout.month.map((column) => ({ chance: 1 / layout.month.length, entries: [column, 1] }));
  return [
    outcomesOf(known.attributes.sizeClass, shares.sizeClass, (size) => [layout.size[size]!, 1]),
    known.month === undefined ? months : [{ chance: 1, entries: [layout.month[known.month - 1]!, 1] }],
    known.desirability === undefined
      ? shares.desirability.map(({ value, share }) => ({
          chance: share,
          entries: [layout.desirability, value],
        }))
      : [{ chance: 1, entries: [layout.desirability, known.desirability] }],
  ];
}

/** What counts on a bike that rides: originality, papers, place. */
function shownUnknown(
  layout: ValueLayout,
  shares: MarketShares,
  known: KnownDescription,
): readonly (readonly Outcome[])[] {
  const original = (value: number, chance: number) => ({
    chance,
    entries: originalityEntries(layout, value),
  });
  return [
    known.originality === undefined
      ? layout.design.originalityKnots.map((knot, index) => original(knot, shares.originality[index]!))
      : [original(known.originality, 1)],
    outcomesOf(undefined, shares.papers, (papers) => [layout.papers[papers], 1]),
    outcomesOf(known.attributes.place, shares.place, (place) => [layout.place[place]!, 1]),
  ];
}

function presentationsOf(
  layout: ValueLayout,
  shares: MarketShares,
  interest: Probability,
): readonly Outcome[] {
  return PRESENTATIONS.map((one) => ({
    chance: shares.presentation[one],
    entries: [layout.presentation[one], one === "full" ? interest : 1],
  }));
}
