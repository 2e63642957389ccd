import type { Resource } from "../service/resource.ts";
import type { Uncertainty, Way } from "../service/uncertainty.ts";

type Cost = Pick<Resource, "money" | "minutes">;

/** A way apart from the shared resources that it asks for. */
export interface OwnWay {
  readonly way: Way;
  readonly asked: readonly number[];
  /** Money (told included) and minutes beside the shared resources, and their variances. */
  readonly money: number;
  readonly minutes: number;
  readonly moneyVariance: number;
  readonly minutesVariance: number;
}

/** Two resources that some uncertainties may both ask for. */
export interface Pair {
  readonly first: number;
  readonly second: number;
  readonly askers: readonly number[];
}

/** The sharing as it is in every class of history: worked out once, then asked class by class. */
export interface Sharing {
  readonly costs: readonly Cost[];
  readonly ones: readonly (readonly OwnWay[])[];
  /** By resource, the uncertainties that may ask for it. */
  readonly askers: readonly (readonly number[])[];
  readonly pairs: readonly Pair[];
}

/**
 * @param shared resources that more than one of the uncertainties may ask for
 */
export function sharingOf(
  uncertainties: readonly Uncertainty[],
  shared: readonly number[],
  resources: readonly Resource[],
): Sharing {
  const costs = shared.map((index) => resources[index]!);
  const places = new Map(shared.map((index, place) => [index, place]));
  const ones = uncertainties.map(({ ways }) => ways.map((way) => ownWay(way, places, costs)));
  const asks = ones.map((ways) => new Set(ways.flatMap(({ way, asked }) => (way.endsFrame ? [] : asked))));
  const askers = costs.map((_, r) => asks.flatMap((asked, one) => (asked.has(r) ? [one] : [])));
  const pairs: Pair[] = [];
  for (let first = 0; first < costs.length; first++)
    for (let second = 0; second < first; second++) {
      const both = askers[first]!.filter((one) => asks[one]!.has(second));
      if (both.length > 0) pairs.push({ first, second, askers: both });
    }
  return { costs, ones, askers, pairs };
}

function ownWay(way: Way, places: ReadonlyMap<number, number>, costs: readonly Cost[]): OwnWay {
  const asked = way.resources.flatMap((index) => places.get(index) ?? []);
  let money = way.money.mean + way.told;
  let minutes = way.minutes.mean;
  let moneyVariance = way.money.variance;
  let minutesVariance = way.minutes.variance;
  for (const r of asked) {
    money -= costs[r]!.money.mean;
    minutes -= costs[r]!.minutes.mean;
    moneyVariance -= costs[r]!.money.variance;
    minutesVariance -= costs[r]!.minutes.variance;
  }
  return { way, asked, money, minutes, moneyVariance, minutesVariance };
}
