import { DomainError } from "../domainError.ts";
import { monotoneRoot } from "./monotoneRoot.ts";

/** Widenings before giving up: the bracket has grown by 2^60 by then. */
const WIDENINGS = 60;

/**
 * Quantile of a distribution known by its cdf alone, such as a mixture: the x with cdf(x) = probability, to 1e-10 relative.
 * @param cdf a function that never falls, from 0 to 1
 * @param probability above 0 and below 1
 * @param low, high a first bracket, low < high; widened by doubling where the quantile lies outside
 * @throws DomainError for a probability or bracket outside its domain
 */
export function mixtureQuantile(
  cdf: (x: number) => number,
  probability: number,
  low: number,
  high: number,
): number {
  if (!(probability > 0 && probability < 1)) {
    throw new DomainError("out-of-domain", "probability", probability, "a number above 0 and below 1");
  }
  const [from, to] = widened(cdf, probability, low, high);
  return monotoneRoot((x) => cdf(x) - probability, from, to);
}

function widened(
  cdf: (x: number) => number,
  probability: number,
  low: number,
  high: number,
): readonly [number, number] {
  let [from, to] = [low, high];
  let step = high - low;
  for (let times = 0; times < WIDENINGS && cdf(from) > probability; times++, step *= 2) {
    [from, to] = [from - step, from];
  }
  for (let times = 0; times < WIDENINGS && cdf(to) < probability; times++, step *= 2) {
    [from, to] = [to, to + step];
  }
  return [from, to];
}
