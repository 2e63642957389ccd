import type { Kept } from "../../bicycle.ts";
import { CLASS_COUNT, FACTORS, type Factor, holdsFactor } from "./factor.ts";
import type { Evidence, History } from "./history.ts";
import type { HistoryIndex } from "./historyIndex.ts";

/** P(z | seen) is proportional to P(z) times the product of the chances of what was seen in class z, here added up in logarithms. */
export function historyAfter(evidence: readonly Evidence[], kept: Kept, index: HistoryIndex): History {
  const prior = index.weights.get(kept)!;
  const logWeights = new Float64Array(CLASS_COUNT);
  for (let z = 0; z < CLASS_COUNT; z++) logWeights[z] = Math.log(prior[z]!);
  for (const { logLikelihood } of evidence)
    for (let z = 0; z < CLASS_COUNT; z++) logWeights[z]! += logLikelihood[z]!;
  const weights = evidence.length === 0 ? prior : normalised(logWeights);
  return { weights, factors: factorChances(weights), evidence, logWeights };
}

/** Class weights as if one piece of evidence had not been seen. */
export function weightsWithout({ logWeights }: History, { logLikelihood }: Evidence): Float64Array {
  return normalised(logWeights.map((sum, z) => sum - logLikelihood[z]!));
}

/** Weights in proportion to their logarithms' exponentials, summing to 1. */
function normalised(logWeights: Float64Array): Float64Array {
  let most = Number.NEGATIVE_INFINITY;
  for (let z = 0; z < CLASS_COUNT; z++) most = Math.max(most, logWeights[z]!);
  const weights = new Float64Array(CLASS_COUNT);
  let sum = 0;
  for (let z = 0; z < CLASS_COUNT; z++) sum += weights[z] = Math.exp(logWeights[z]! - most);
  for (let z = 0; z < CLASS_COUNT; z++) weights[z]! /= sum;
  return weights;
}

function factorChances(weights: Float64Array): Record<Factor, number> {
  const chances = FACTORS.map((_, f) => {
    let chance = 0;
    for (let z = 0; z < CLASS_COUNT; z++) if (holdsFactor(z, f)) chance += weights[z]!;
    return Math.min(1, chance);
  });
  return Object.fromEntries(FACTORS.map((id, f) => [id, chances[f]!])) as Record<Factor, number>;
}
