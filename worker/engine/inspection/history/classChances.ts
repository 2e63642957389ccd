import { CLASS_COUNT } from "./factor.ts";
import { levelOdds } from "./levelOdds.ts";

/**
 * Chances of a check's levels in each class, with the prior as their average over the classes. Given the class, the odds of level k or worse are
 * shift x u_k, and u_k is solved for (see `levelOdds`), so that
 * P(level = k | z) = shift (u_k - u_k+1) / ((1 + shift u_k)(1 + shift u_k+1)): no difference of nearly equal chances is taken. On kinds that are not degrees the same
 * holds of "not the first", and the others keep their proportions.
 * Source of the form: McCullagh (1980), Regression models for ordinal data, J. R. Statist. Soc. B 42, 109-142 (proportional odds).
 * @param prior chances of the levels, summing to 1
 * @param ordered whether the levels are degrees
 * @param weights of the classes, summing to 1
 * @param shifts the odds multiplier of each class
 * @returns chance of level k in class z at index z x levels + k
 */
export function classChances(
  prior: readonly number[],
  ordered: boolean,
  weights: Float64Array,
  shifts: Float64Array,
): Float64Array {
  const levels = prior.length;
  const chances = new Float64Array(CLASS_COUNT * levels);
  if (ordered) fillDegrees(chances, prior, weights, shifts);
  else fillKinds(chances, prior, weights, shifts);
  return chances;
}

/** The same chances in every class. */
export function sameInEveryClass(prior: readonly number[]): Float64Array {
  const chances = new Float64Array(CLASS_COUNT * prior.length);
  for (let z = 0; z < CLASS_COUNT; z++) chances.set(prior, z * prior.length);
  return chances;
}

/** From the worst level up; a level reaches from its own cut to the next worse one's. */
function fillDegrees(
  chances: Float64Array,
  prior: readonly number[],
  weights: Float64Array,
  shifts: Float64Array,
): void {
  const levels = prior.length;
  let tail = 0;
  let worse = 0;
  for (let rank = levels - 1; rank >= 0; rank--) {
    tail += prior[rank]!;
    const odds = rank === 0 ? Number.POSITIVE_INFINITY : levelOdds(tail, weights, shifts);
    for (let z = 0; z < CLASS_COUNT; z++)
      chances[z * levels + rank] = chanceBetween(shifts[z]! * odds, shifts[z]! * worse);
    worse = odds;
  }
}

/** Chance of lying between two cuts, given the odds of lying beyond each. */
function chanceBetween(odds: number, worseOdds: number): number {
  if (worseOdds === Number.POSITIVE_INFINITY) return 0;
  if (odds === Number.POSITIVE_INFINITY) return 1 / (1 + worseOdds);
  return Math.max(0, odds - worseOdds) / ((1 + odds) * (1 + worseOdds));
}

function fillKinds(
  chances: Float64Array,
  prior: readonly number[],
  weights: Float64Array,
  shifts: Float64Array,
): void {
  const levels = prior.length;
  const others = prior.reduce((sum, chance, rank) => (rank === 0 ? 0 : sum + chance), 0);
  const odds = levelOdds(others, weights, shifts);
  for (let z = 0; z < CLASS_COUNT; z++) {
    const first = chanceBetween(Number.POSITIVE_INFINITY, shifts[z]! * odds);
    const other = chanceBetween(shifts[z]! * odds, 0);
    chances[z * levels] = first;
    for (let rank = 1; rank < levels; rank++)
      chances[z * levels + rank] = others > 0 ? (other * prior[rank]!) / others : 0;
  }
}
