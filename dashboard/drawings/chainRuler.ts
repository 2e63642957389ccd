/** What a chain's drawing is made from. */
export interface ChainReading {
  /** Over the pitches, mm. */
  readonly length: number;
  readonly pitches: number;
  /** Of a new chain, mm. */
  readonly pitch: number;
}

/** The stretch of the ruler under the glass, in mm. */
export interface Glass {
  readonly from: number;
  readonly to: number;
}

/** How much longer than new, in % of the new length. */
export function elongation({ length, pitches, pitch }: ChainReading): number {
  const whenNew = pitches * pitch;
  return (100 * (length - whenNew)) / whenNew;
}

/** The length at which a chain has grown by so much, mm. */
export function lengthAt(percent: number, { pitches, pitch }: Omit<ChainReading, "length">): number {
  return pitches * pitch * (1 + percent / 100);
}

/**
 * What the glass shows: from a little below new to a little beyond the last limit, in whole millimetres.
 * @param limits elongations, %
 */
export function glassOver(limits: readonly number[], chain: Omit<ChainReading, "length">): Glass {
  const whenNew = lengthAt(0, chain);
  const last = lengthAt(Math.max(0, ...limits), chain);
  const room = Math.max(1, (last - whenNew) / 3);
  return { from: Math.floor(whenNew - room), to: Math.ceil(last + room) };
}

/** Where a length stands under the glass, 0 to 1; what lies outside stands at its edge. */
export function underGlass(length: number, { from, to }: Glass): number {
  return Math.min(1, Math.max(0, (length - from) / (to - from)));
}
