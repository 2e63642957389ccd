import type { Branch } from "../decision/branch.ts";
import { marginMixture, marginRange } from "../decision/marginMixture.ts";
import { mixtureAt, type SaleMixture } from "../decision/saleMixture.ts";
import type { Money, Probability } from "../quantity.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { gaussHermite, type Quadrature } from "../statistics/gaussHermite.ts";
import { convolve, type Lattice } from "../statistics/lattice.ts";
import { marketLoadings } from "./marketLoadings.ts";
import { isLeft, type Taken } from "./taken.ts";

/** Margin of a whole set. */
export interface MarginTogether {
  readonly mean: Money;
  readonly quantile: (probability: Probability) => Money;
}

/** The market is good or bad for all: five nodes hold every chance to a few thousandths. */
const MARKETS = gaussHermite(5);
/** A sale alone shares its market with none. */
const KNOWN: Quadrature = { nodes: [0], weights: [1] };
/** Lattice points: some for each find, so that each keeps its shape, within limits. */
const POINTS = { each: 64, least: 512, most: 2048 };
/** A hundredth of a cent, where nothing is uncertain. */
const LEAST_STEP = 1e-4;
/** No sale is known but for the market: some of its variance stays its own. */
const LEAST_OWN = 0.05;

/**
 * The sum of the margins. At each node of what is not known of the market, the finds' margins are independent and are summed on a lattice; without the
 * common part six bikes would look surer than they are.
 */
export function marginTogether(taken: readonly Taken[]): MarginTogether {
  const mean = taken.reduce((sum, { option }) => sum + option.course.expected.margin, 0);
  const sold = taken.filter(({ option }) => !isLeft(option));
  const left = taken.reduce(
    (sum, { option }) => (isLeft(option) ? sum + option.course.expected.margin : sum),
    0,
  );
  if (sold.length === 0) return { mean, quantile: () => mean };
  const loadings = marketLoadings(sold);
  const { nodes, weights } = loadings.some((loading) => loading > 0) ? MARKETS : KNOWN;
  const markets = nodes.map((node) =>
    sold.map(({ option }, index) => marginMixture(inMarket(option.course.branches, loadings[index]!, node))),
  );
  const ranges = sold.map((_, index) => rangeOver(markets.map((mixtures) => mixtures[index]!)));
  const points = Math.min(POINTS.most, Math.max(POINTS.least, POINTS.each * sold.length));
  const step = Math.max(LEAST_STEP, ranges.reduce((sum, { low, high }) => sum + high - low, 0) / points);
  const sums = markets.map((mixtures) =>
    mixtures
      .map((mixture, index) => onLattice(mixture, ranges[index]!, step))
      .reduce((sum, one) => convolve(sum, one)),
  );
  const chances = sums[0]!.map((_, point) =>
    sums.reduce((sum, lattice, market) => sum + weights[market]! * lattice[point]!, 0),
  );
  const lowest = left + ranges.reduce((sum, { low }) => sum + low, 0);
  return { mean, quantile: (probability) => lowest + step * pointAt(chances, probability) };
}

interface Range {
  readonly low: Money;
  readonly high: Money;
}

/** What holds all but a negligible share of the margin in every market. */
function rangeOver(mixtures: readonly SaleMixture[]): Range {
  const all = mixtures.map((mixture) => marginRange(mixture));
  return { low: Math.min(...all.map(([low]) => low)), high: Math.max(...all.map(([, high]) => high)) };
}

/** A course's branches in one state of the market: prices are moved, and scatter by what is left of their spread. */
function inMarket(branches: readonly Branch[], loading: number, z: number): Branch[] {
  return branches
    .filter(({ chance }) => chance > 0)
    .map((branch) => {
      const { price } = branch;
      if (price === null) return branch;
      const own = Math.max(LEAST_OWN * squared(price.logSd), squared(price.logSd) - squared(loading));
      return { ...branch, price: { logMedian: price.logMedian + loading * z, logSd: Math.sqrt(own) } };
    });
}

/** The chance of each cell around low, low + step, ... */
function onLattice(mixture: SaleMixture, { low, high }: Range, step: Money): Lattice {
  const size = Math.ceil((high - low) / step) + 1;
  const lattice = new Float64Array(size);
  let last = 0;
  for (let point = 0; point < size; point++) {
    const here = point === size - 1 ? 1 : mixtureAt(mixture, low + (point + 0.5) * step).below;
    lattice[point] = here - last;
    last = here;
  }
  return lattice;
}

/** The point, with its share of a step, below which a chance lies. */
function pointAt(chances: Lattice, probability: Probability): number {
  let below = 0;
  for (let point = 0; point < chances.length; point++) {
    const chance = chances[point]!;
    if (below + chance >= probability) return point - 0.5 + (chance > 0 ? (probability - below) / chance : 0);
    below += chance;
  }
  return chances.length - 1;
}
