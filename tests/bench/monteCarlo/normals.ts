import type { RandomBits } from "./randomBits.ts";

const LAYERS = 128;
/** Where the tail begins, and the area of each layer. */
const TAIL = 3.442619855899;
const AREA = 9.91256303526217e-3;

/** Right edges of the layers, the widest first, and what share of each lies under the curve for certain. */
const EDGE = new Float64Array(LAYERS + 1);
const INSIDE = new Float64Array(LAYERS);
EDGE[0] = AREA / bell(TAIL);
EDGE[1] = TAIL;
for (let layer = 2; layer < LAYERS; layer++) {
  const below = EDGE[layer - 1]!;
  EDGE[layer] = Math.sqrt(-2 * Math.log(AREA / below + bell(below)));
}
for (let layer = 0; layer < LAYERS; layer++) INSIDE[layer] = EDGE[layer + 1]! / EDGE[layer]!;

/** Of 32 bits, 7 choose the layer and 25 the place in it. */
const LAYER_BITS = 7;
const PLACE = 2 ** -24;
const CENTRE = 2 ** -25;

function bell(x: number): number {
  return Math.exp(-0.5 * x * x);
}

/**
 * Fills a table with standard normal numbers: the ziggurat of Marsaglia & Tsang 2000 with 128 layers, layer and place from different bits (Doornik 2005). One
 * number in a hundred leaves the quick way.
 */
export function normals(bits: RandomBits): (into: Float64Array) => void {
  let quick = new Uint32Array(0);
  const spare = new Uint32Array(256);
  let used = spare.length;
  const uniform = (): number => {
    if (used === spare.length) {
      bits.fill(spare);
      used = 0;
    }
    return (spare[used++]! + 0.5) * 2 ** -32;
  };
  const slow = (layer: number, place: number): number => {
    if (layer === 0) return place < 0 ? -tail(uniform) : tail(uniform);
    const x = place * EDGE[layer]!;
    const outer = Math.exp(-0.5 * (EDGE[layer]! ** 2 - x * x));
    const inner = Math.exp(-0.5 * (EDGE[layer + 1]! ** 2 - x * x));
    if (inner + uniform() * (outer - inner) < 1) return x;
    return anew();
  };
  const anew = (): number => {
    const layer = Math.floor(uniform() * LAYERS);
    const place = 2 * uniform() - 1;
    return Math.abs(place) < INSIDE[layer]! ? place * EDGE[layer]! : slow(layer, place);
  };
  return (into) => {
    if (quick.length !== into.length) quick = new Uint32Array(into.length);
    bits.fill(quick);
    for (let i = 0; i < into.length; i++) {
      const word = quick[i]! | 0;
      const layer = word & (LAYERS - 1);
      const place = (word >> LAYER_BITS) * PLACE + CENTRE;
      into[i] = Math.abs(place) < INSIDE[layer]! ? place * EDGE[layer]! : slow(layer, place);
    }
  };
}

/** Beyond the last edge (Marsaglia 1964). */
function tail(uniform: () => number): number {
  for (;;) {
    const x = -Math.log(uniform()) / TAIL;
    const y = -Math.log(uniform());
    if (y + y >= x * x) return TAIL + x;
  }
}
