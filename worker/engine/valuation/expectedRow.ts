import type { Probability } from "../quantity.ts";
import { belongs, type ClassedAttributes, restorationInterest } from "./bikeClass.ts";
import { addMarginal, type Outcome, outcomesOf } from "./marginal.ts";
import { originalityEntries, stateEntries } from "./rowEntries.ts";
import { PRESENTATIONS } from "./saleDescription.ts";
import { chanceThat, coresOf, type KnownDescription, statesOf } from "./unknowns.ts";
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
 * what a linear model asks for. Where everything is known it is the known bike's row, with no variance. A term of fashion counts as independent
 * of the other unknowns but kind, tier, era and material.
 */
export function expectedRow(
  layout: ValueLayout,
  coefficients: Float64Array,
  shares: MarketShares,
  known: KnownDescription,
): ExpectedRow {
  const x = new Float64Array(layout.names.length);
  const write = (outcomes: readonly Outcome[], weight: Probability) =>
    addMarginal(x, coefficients, outcomes, weight);
  const states = statesOf(known, layout.design, shares);
  let rides = 0;
  for (const { what, chance } of states) if (what.kind === "rides") rides += chance;
  x[layout.intercept] = 1;
  x[layout.market] = 1;

  let variance = 0;
  for (const outcomes of alwaysUnknown(layout, shares, known)) variance += write(outcomes, 1).variance;
  let shownMean = 0;
  for (const outcomes of shownUnknown(layout, shares, known)) {
    const { mean, variance: own } = write(outcomes, rides);
    shownMean += mean;
    variance += rides * own;
  }

  // Kind, tier, era, material and state, on which the rest depends: mean and mean square of log price over their combinations.
  let [mean, square, squaredSpread] = [0, 0, 0];
  for (const { what: core, chance } of coresOf(known.attributes, shares)) {
    x[layout.marketOfCategory[core.category]!]! += chance;
    let base = write([{ chance: 1, entries: coreEntries(layout, core) }], chance).mean;
    for (const [index, term] of layout.design.fashion.entries()) {
      const holds = chanceThat(term, core, known, layout.design, shares);
      if (holds === 0) continue;
      const effect = write([{ chance: holds, entries: [layout.fashion[index]!, 1] }], chance);
      base += effect.mean;
      variance += chance * effect.variance;
    }
    const interest = restorationInterest(layout.design.interest, core);
    const presentations = presentationsOf(layout, shares, interest);
    for (const { what: state, chance: ofState } of states) {
      const weight = chance * ofState;
      const entries = stateEntries(layout, core.componentTier, interest, state);
      let effect = base + write([{ chance: 1, entries }], weight).mean;
      if (state.kind === "rides") {
        const shown = write(presentations, weight);
        effect += shownMean + shown.mean;
        variance += weight * shown.variance;
      }
      mean += weight * effect;
      square += weight * effect * effect;
    }
    squaredSpread += chance * spreadOf(layout, core, known, shares);
  }
  return { x, variance: variance + Math.max(0, square - mean * mean), squaredSpread, rides };
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

function coreEntries(layout: ValueLayout, core: ClassedAttributes): readonly number[] {
  const entries = [
    layout.kind[core.category]![core.componentTier],
    1,
    layout.era[core.category]![core.era],
    1,
  ];
  layout.design.material.forEach((term, index) => {
    if (belongs(term, core)) entries.push(layout.material[index]!, 1);
  });
  return entries;
}

/** Mean square of the spread's multiple over what is not known. */
function spreadOf(
  layout: ValueLayout,
  core: ClassedAttributes,
  known: KnownDescription,
  shares: MarketShares,
): number {
  const { any, spread } = layout.design.collectable;
  let scatters = 0;
  for (const term of any) scatters = Math.max(scatters, chanceThat(term, core, known, layout.design, shares));
  return 1 + scatters * (spread * spread - 1);
}
