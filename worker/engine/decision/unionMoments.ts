import { squared } from "../statistics/elementary/powers.ts";
import type { OwnWay, Pair, Sharing } from "./sharing.ts";

/** Second moments of a sum in which shared resources are paid once. */
export interface UnionMoments {
  readonly variance: number;
  readonly minutesVariance: number;
  readonly covariance: number;
}

/**
 * Variance and covariance of money (told included) and minutes of some uncertainties in one class, exact. What they bring is what each brings on its own beside
 * the shared resources, plus each shared resource where anyone asks: U = 1 - prod (1 - a_j). As the uncertainties are independent,
 * Cov(x_i, U) = Cov(x_i, a_i) prod over the others of (1 - p_j), and E[(1 - U)(1 - V)] = prod E[(1 - a_j)(1 - b_j)]; where nobody may ask for both, U and V
 * are independent.
 * @param z the class of history
 */
export function unionMoments({ costs, ones, askers, pairs }: Sharing, z: number): UnionMoments {
  const count = costs.length;
  const size = ones.length * count;
  // By uncertainty and resource: chance of asking, and covariance of its own money and minutes with asking.
  const asks = new Float64Array(size);
  const withMoney = new Float64Array(size);
  const withMinutes = new Float64Array(size);
  const sums = { variance: 0, minutesVariance: 0, covariance: 0 };
  const left = ones.map((ways, one) => addOwn(ways, one * count, z, { asks, withMoney, withMinutes }, sums));
  const none = askers.map((asking, r) =>
    asking.reduce((product, one) => product * (1 - asks[one * count + r]!), 1),
  );
  for (let r = 0; r < count; r++) {
    const { money, minutes } = costs[r]!;
    const unasked = none[r]!;
    const used = 1 - unasked;
    sums.variance += used * (money.variance + unasked * squared(money.mean));
    sums.minutesVariance += used * (minutes.variance + unasked * squared(minutes.mean));
    sums.covariance += used * unasked * money.mean * minutes.mean;
    for (const one of askers[r]!) {
      const place = one * count + r;
      const others = unaskedByOthers(unasked, one, r, askers, asks, count);
      sums.variance += 2 * money.mean * withMoney[place]! * others;
      sums.minutesVariance += 2 * minutes.mean * withMinutes[place]! * others;
      sums.covariance += (minutes.mean * withMoney[place]! + money.mean * withMinutes[place]!) * others;
    }
  }
  for (const pair of pairs) addPair(pair, { costs, ones, askers }, left, asks, z, sums);
  return sums;
}

interface Sums {
  variance: number;
  minutesVariance: number;
  covariance: number;
}

/** Chance that no other uncertainty asks for a resource. */
function unaskedByOthers(
  unasked: number,
  one: number,
  r: number,
  askers: Sharing["askers"],
  asks: Float64Array,
  count: number,
): number {
  const own = asks[one * count + r]!;
  if (own < 1) return unasked / (1 - own);
  return askers[r]!.reduce(
    (product, other) => (other === one ? product : product * (1 - asks[other * count + r]!)),
    1,
  );
}

/** Adds one uncertainty's own second moments, shared resources left out. @returns chance that it does not end the frame */
function addOwn(
  ways: readonly OwnWay[],
  from: number,
  z: number,
  into: { asks: Float64Array; withMoney: Float64Array; withMinutes: Float64Array },
  sums: Sums,
): number {
  let lost = 0;
  for (const { way } of ways) if (way.endsFrame) lost += way.chances[z]!;
  if (lost >= 1) return 0;
  let mean = 0;
  let meanMinutes = 0;
  for (const { way, asked, money, minutes, moneyVariance, minutesVariance } of ways) {
    if (way.endsFrame) continue;
    const chance = way.chances[z]! / (1 - lost);
    mean += chance * money;
    meanMinutes += chance * minutes;
    sums.variance += chance * (money * money + moneyVariance);
    sums.minutesVariance += chance * (minutes * minutes + minutesVariance);
    sums.covariance += chance * money * minutes;
    for (const r of asked) {
      into.asks[from + r]! += chance;
      into.withMoney[from + r]! += chance * money;
      into.withMinutes[from + r]! += chance * minutes;
    }
  }
  sums.variance -= mean * mean;
  sums.minutesVariance -= meanMinutes * meanMinutes;
  sums.covariance -= mean * meanMinutes;
  for (const { way, asked } of ways) {
    if (way.endsFrame) continue;
    const chance = way.chances[z]! / (1 - lost);
    for (const r of asked) {
      into.withMoney[from + r]! -= chance * mean;
      into.withMinutes[from + r]! -= chance * meanMinutes;
    }
  }
  return 1 - lost;
}

/** Adds the covariance of two resources that some may both ask for. */
function addPair(
  { first, second, askers: both }: Pair,
  { costs, ones, askers }: Pick<Sharing, "costs" | "ones" | "askers">,
  left: readonly number[],
  asks: Float64Array,
  z: number,
  sums: Sums,
): void {
  const count = costs.length;
  let neither = 1;
  let apart = 1;
  for (const one of both) {
    const p = asks[one * count + first]!;
    const q = asks[one * count + second]!;
    neither *= 1 - p - q + chanceOfBoth(ones[one]!, first, second, z, left[one]!);
    apart *= (1 - p) * (1 - q);
  }
  let others = 1;
  for (const one of askers[first]!) if (!both.includes(one)) others *= 1 - asks[one * count + first]!;
  for (const one of askers[second]!) if (!both.includes(one)) others *= 1 - asks[one * count + second]!;
  const together = others * (neither - apart);
  const [a, b] = [costs[first]!, costs[second]!];
  sums.variance += 2 * a.money.mean * b.money.mean * together;
  sums.minutesVariance += 2 * a.minutes.mean * b.minutes.mean * together;
  sums.covariance += (a.money.mean * b.minutes.mean + b.money.mean * a.minutes.mean) * together;
}

function chanceOfBoth(
  ways: readonly OwnWay[],
  first: number,
  second: number,
  z: number,
  left: number,
): number {
  let chance = 0;
  for (const { way, asked } of ways)
    if (!way.endsFrame && asked.includes(first) && asked.includes(second)) chance += way.chances[z]!;
  return left > 0 ? chance / left : 0;
}
