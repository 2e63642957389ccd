/** Slots of an alias table: a slot keeps its own item where the low bits stay below its threshold, and else gives its alias. */
export interface AliasTable {
  /** The high bits of a random word choose the slot: word >>> shift. */
  readonly shift: number;
  /** The low bits: word & lowBits. */
  readonly lowBits: number;
  /** Slots: a power of two. */
  readonly size: number;
  readonly threshold: Uint32Array;
  readonly alias: Uint16Array;
}

/**
 * An item drawn in one step with one random word of 32 bits (Walker 1977; built as Vose 1991). As its slots are a power of two the word needs no division.
 * @param chances of each item; they sum to 1 or nearly so
 * @param slots a power of two of at least 2 and at least the count of items, at most 2^16
 */
export function aliasTable(chances: ArrayLike<number>, slots = slotsFor(chances.length)): AliasTable {
  const shift = 32 - Math.log2(slots);
  const range = 2 ** shift;
  const threshold = new Uint32Array(slots);
  const alias = Uint16Array.from({ length: slots }, (_, slot) => slot);
  let total = 0;
  for (let item = 0; item < chances.length; item++) total += chances[item]!;
  const scaled = Float64Array.from({ length: slots }, (_, item) => ((chances[item] ?? 0) / total) * slots);
  const poor: number[] = [];
  const rich: number[] = [];
  for (let slot = 0; slot < slots; slot++) (scaled[slot]! < 1 ? poor : rich).push(slot);
  while (poor.length > 0 && rich.length > 0) {
    const low = poor.pop()!;
    const high = rich.at(-1)!;
    threshold[low] = Math.min(range - 1, Math.round(scaled[low]! * range));
    alias[low] = high;
    scaled[high] = scaled[high]! + scaled[low]! - 1;
    if (scaled[high]! < 1) poor.push(rich.pop()!);
  }
  // What rounding leaves: a slot that gives its own item, whichever way the low bits fall.
  for (const slot of [...poor, ...rich]) threshold[slot] = range - 1;
  return { shift, lowBits: range - 1, size: slots, threshold, alias };
}

/** The least power of two of at least 2 that holds so many items. */
export function slotsFor(items: number): number {
  return Math.max(2, 2 ** Math.ceil(Math.log2(items)));
}
