import type { Kept } from "../../bicycle.ts";
import { exp } from "../../statistics/elementary/exp.ts";
import { log } from "../../statistics/elementary/log.ts";
import { CLASS_COUNT, FACTORS, type Factor, holdsFactor } from "./factor.ts";
import type { Evidence, History } from "./history.ts";
import type { HistoryIndex } from "./historyIndex.ts";

/** Chances of at least 1e-30 that are multiplied before the logarithm of the product is taken: it cannot reach 0. */
const AT_ONCE = 8;

/** P(z | seen) is proportional to P(z) times the product of the chances of what was seen in class z, added up in logarithms. */
export function historyAfter(evidence: Evidence, kept: Kept, index: HistoryIndex): History {
  const prior = index.weights.get(kept)!;
  const weights = evidence.findings.length === 0 ? prior : normalised(logWeights(prior, evidence));
  return { weights, factors: factorChances(weights), evidence };
}

function logWeights(prior: Float64Array, { findings, likelihoods }: Evidence): Float64Array {
  const logs = new Float64Array(CLASS_COUNT);
  for (let z = 0; z < CLASS_COUNT; z++) {
    let sum = 0;
    let product = prior[z]!;
    for (let at = 0; at < findings.length; at++) {
      product *= likelihoods[at * CLASS_COUNT + z]!;
      if ((at + 1) % AT_ONCE !== 0) continue;
      sum += log(product);
      product = 1;
    }
    logs[z] = sum + log(product);
  }
  return logs;
}

/** Weights in proportion to their logarithms' exponentials, summing to 1; in place. */
function normalised(weights: Float64Array): Float64Array {
  let most = Number.NEGATIVE_INFINITY;
  for (let z = 0; z < CLASS_COUNT; z++) most = Math.max(most, weights[z]!);
  let sum = 0;
  for (let z = 0; z < CLASS_COUNT; z++) {
    weights[z] = exp(weights[z]! - most);
    sum += weights[z]!;
  }
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
