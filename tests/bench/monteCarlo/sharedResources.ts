import type { Resource } from "../../../worker/engine/service/resource.ts";
import { goingOn, type Uncertainty } from "../../../worker/engine/service/uncertainty.ts";
import { type Amounts, addAt, amountsOf } from "./amounts.ts";

/** A bit for each resource that more than one uncertainty may ask for. */
export type SharedBits = ReadonlyMap<number, number>;

const BYTE = 8;
const MOST = 2 * BYTE;

/** @throws for more of them than two bytes have bits */
export function sharedBits(all: readonly Uncertainty[]): SharedBits {
  const askers = new Map<number, number>();
  for (const { ways } of all)
    for (const index of new Set(ways.flatMap(({ resources }) => resources)))
      askers.set(index, (askers.get(index) ?? 0) + 1);
  const shared = [...askers].filter(([, count]) => count > 1);
  if (shared.length > MOST) throw new Error(`${shared.length} shared resources: bits for ${MOST}`);
  return new Map(shared.map(([index], bit) => [index, bit]));
}

/** The bits of some resources; those that are not shared have none. */
export function bitsOf(resources: Iterable<number>, bits: SharedBits): number {
  let mask = 0;
  for (const index of resources) if (bits.has(index)) mask |= 1 << bits.get(index)!;
  return mask;
}

/** What any set of shared resources costs, each paid once: by the low and by the high byte of its bits. */
export function sharedCosts(bits: SharedBits, resources: readonly Resource[]): readonly [Amounts, Amounts] {
  return [costsFrom(0, bits, resources), costsFrom(BYTE, bits, resources)];
}

function costsFrom(first: number, bits: SharedBits, resources: readonly Resource[]): Amounts {
  const costs = amountsOf(2 ** BYTE);
  for (const [index, bit] of bits) {
    if (bit < first || bit >= first + BYTE) continue;
    const cost = goingOn(resources[index]!);
    for (let asked = 0; asked < 2 ** BYTE; asked++)
      if ((asked >> (bit - first)) & 1) addAt(costs, asked, cost);
  }
  return costs;
}
