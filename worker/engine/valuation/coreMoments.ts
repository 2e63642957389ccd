import type { Tier } from "../bicycle.ts";
import type { Probability } from "../quantity.ts";
import { belongs, type ClassedAttributes, restorationInterest } from "./bikeClass.ts";
import { addMarginal } from "./marginal.ts";
import { chanceThat, coresOf, type KnownDescription } from "./unknowns.ts";
import type { ValueLayout } from "./valueLayout.ts";
import type { MarketShares } from "./valueTables.ts";

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
  const x = new Float64Array(layout.names.length);
  const cells: CoreCell[] = [];
  let [within, squaredSpread] = [0, 0];
  for (const { what: core, chance } of coresOf(known.attributes, shares)) {
    x[layout.marketOfCategory[core.category]!]! += chance;
    let effect = addMarginal(
      x,
      coefficients,
      [{ chance: 1, entries: coreEntries(layout, core) }],
      chance,
    ).mean;
    for (let index = 0; index < fashion.length; index++) {
      const holds = chanceThat(fashion[index]!, core, known, layout.design, shares);
      if (holds === 0) continue;
      const one = addMarginal(
        x,
        coefficients,
        [{ chance: holds, entries: [layout.fashion[index]!, 1] }],
        chance,
      );
      effect += one.mean;
      within += chance * one.variance;
    }
    let scatters = 0;
    for (const term of collectable.any)
      scatters = Math.max(scatters, chanceThat(term, core, known, layout.design, shares));
    squaredSpread += chance * (1 + scatters * (collectable.spread ** 2 - 1));
    const cell = cellOf(cells, core.componentTier, restorationInterest(interests, core));
    cell.chance += chance;
    cell.sum += chance * effect;
    cell.square += chance * effect * effect;
  }
  return { x, cells, within, squaredSpread };
}

function cellOf(cells: CoreCell[], tier: Tier, interest: Probability): CoreCell {
  const found = cells.find((cell) => cell.tier === tier && cell.interest === interest);
  if (found !== undefined) return found;
  const cell: CoreCell = { tier, interest, chance: 0, sum: 0, square: 0 };
  cells.push(cell);
  return cell;
}

function coreEntries(layout: ValueLayout, core: ClassedAttributes): readonly number[] {
  const { category, componentTier, era } = core;
  const entries = [layout.kind[category]![componentTier], 1, layout.era[category]![era], 1];
  layout.design.material.forEach((term, index) => {
    if (belongs(term, core)) entries.push(layout.material[index]!, 1);
  });
  return entries;
}
