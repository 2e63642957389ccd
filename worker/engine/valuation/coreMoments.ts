import type { Tier } from "../bicycle.ts";
import type { Probability } from "../quantity.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { belongs, type ClassedAttributes, restorationInterest } from "./bikeClass.ts";
import { addMarginal, type Outcome } from "./marginal.ts";
import { chanceInClass, coresOf, type KnownDescription } from "./unknowns.ts";
import { REFERENCE, type ValueLayout } from "./valueLayout.ts";
import type { MarketShares, ValueTerm } from "./valueTables.ts";

/** The bikes of one tier and interest in restoration: on these alone depends what a state is worth. */
export interface CoreCell {
  readonly tier: Tier;
  readonly interest: Probability;
  /** Their chance, and the sums of chance x effect and chance x effect^2, the effect being that of kind, era, material and fashion on log price. */
  chance: Probability;
  sum: number;
  square: number;
}

/** What kind, tier, era and material leave open of a bike, summed over all that they may be. */
export interface CoreMoments {
  /** Mean row of their columns. */
  readonly x: Float64Array;
  readonly cells: readonly CoreCell[];
  /** Variance of log price within a bike of known kind, tier, era and material: whether fashion holds. */
  readonly within: number;
  /** Mean square of the spread's multiple. */
  readonly squaredSpread: number;
}

/** Whether a term of fashion holds counts as independent of the other unknowns but kind, tier, era and material. */
export function coreMoments(
  layout: ValueLayout,
  coefficients: Float64Array,
  shares: MarketShares,
  known: KnownDescription,
): CoreMoments {
  const { fashion, interest: interests, collectable } = layout.design;
  const inClass = (term: ValueTerm, column: number): OpenTerm => {
    const holds = chanceInClass(term, known, layout.design, shares);
    return { term, holds, outcomes: [{ chance: holds, entries: [column, 1] }] };
  };
  const fashions = fashion.map((term, index) => inClass(term, layout.fashion[index]!));
  const collectables = collectable.any.map((term) => inClass(term, REFERENCE));
  const x = new Float64Array(layout.names.length);
  const cells: CoreCell[] = [];
  let [within, squaredSpread] = [0, 0];
  for (const { what: core, chance } of coresOf(known.attributes, shares)) {
    x[layout.marketOfCategory[core.category]!]! += chance;
    let effect = addMarginal(x, coefficients, coreOutcome(layout, core), chance).mean;
    for (const { term, holds, outcomes } of fashions) {
      if (holds === 0 || !belongs(term, core)) continue;
      const one = addMarginal(x, coefficients, outcomes, chance);
      effect += one.mean;
      within += chance * one.variance;
    }
    let scatters = 0;
    for (const { term, holds } of collectables) if (holds > scatters && belongs(term, core)) scatters = holds;
    squaredSpread += chance * (1 + scatters * (squared(collectable.spread) - 1));
    const cell = cellOf(cells, core.componentTier, restorationInterest(interests, core));
    cell.chance += chance;
    cell.sum += chance * effect;
    cell.square += chance * effect * effect;
  }
  return { x, cells, within, squaredSpread };
}

/** A term with the chance that it holds where its class does. */
interface OpenTerm {
  readonly term: ValueTerm;
  readonly holds: Probability;
  readonly outcomes: readonly Outcome[];
}

function cellOf(cells: CoreCell[], tier: Tier, interest: Probability): CoreCell {
  const found = cells.find((cell) => cell.tier === tier && cell.interest === interest);
  if (found !== undefined) return found;
  const cell: CoreCell = { tier, interest, chance: 0, sum: 0, square: 0 };
  cells.push(cell);
  return cell;
}

function coreOutcome(layout: ValueLayout, core: ClassedAttributes): readonly Outcome[] {
  const { category, componentTier, era } = core;
  const entries = [layout.kind[category]![componentTier], 1, layout.era[category]![era], 1];
  layout.design.material.forEach((term, index) => {
    if (belongs(term, core)) entries.push(layout.material[index]!, 1);
  });
  return [{ chance: 1, entries }];
}
