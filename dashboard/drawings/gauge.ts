import type { Threshold } from "../api/types.ts";

/** A gauge's bands are the limits in order, lowest first. Each takes the same width: it is a scale of levels, not of millimetres. */
export function bandsOf(limits: readonly Threshold[]): readonly Threshold[] {
  return [...limits].sort((a, b) => (a.from ?? -Infinity) - (b.from ?? -Infinity));
}

/** Where a value stands on the gauge, 0 to 1: in its band, as far along as it lies between the band's limits. */
export function placeOn(bands: readonly Threshold[], value: number): number {
  const n = bands.length;
  const at = bands.findIndex(({ below }) => below === null || value < below);
  const index = at === -1 ? n - 1 : at;
  return (index + along(bands, index, value)) / n;
}

/** How far along its band a value lies, 0 to 1. An open end runs out: the further, the nearer to its edge. */
function along(bands: readonly Threshold[], index: number, value: number): number {
  const { from, below } = bands[index]!;
  if (from !== null && below !== null) return (value - from) / (below - from);
  const width = neighbourWidth(bands, index);
  if (from !== null) return (value - from) / (value - from + width);
  if (below !== null) return width / (below - value + width);
  return 0.5;
}

/** The width of the closed band beside an open one; where there is none, the size of its limit; never nought. */
function neighbourWidth(bands: readonly Threshold[], index: number): number {
  const closed = [bands[index - 1], bands[index + 1]].find(
    (band) => band !== undefined && band.from !== null && band.below !== null,
  );
  if (closed !== undefined) return closed.below! - closed.from!;
  const limit = Math.abs(bands[index]!.from ?? bands[index]!.below ?? 0);
  return limit === 0 ? OPEN_WIDTH : limit;
}

/** Where nothing says how wide an open band is: ten of its unit are half the way. */
const OPEN_WIDTH = 10;
