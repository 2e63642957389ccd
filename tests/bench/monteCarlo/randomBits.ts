export interface RandomBits {
  /** Fills all of it with uniform integers from 0 to 2^32 - 1. */
  readonly fill: (into: Uint32Array) => void;
}

/**
 * Uniform integers of 32 bits: xoshiro128++ (Blackman & Vigna 2021, public domain), period 2^128 - 1. The state stays in local variables while a table is
 * filled, which costs about a nanosecond a number.
 * @param start four words, not all 0
 */
export function xoshiro(start: readonly number[]): RandomBits {
  const state = Int32Array.from(start);
  return {
    fill: (into) => {
      let a = state[0]!;
      let b = state[1]!;
      let c = state[2]!;
      let d = state[3]!;
      for (let i = 0; i < into.length; i++) {
        const sum = (a + d) | 0;
        into[i] = (((sum << 7) | (sum >>> 25)) + a) | 0;
        const shifted = b << 9;
        c ^= a;
        d ^= b;
        b ^= c;
        a ^= d;
        c ^= shifted;
        d = (d << 11) | (d >>> 21);
      }
      state[0] = a;
      state[1] = b;
      state[2] = c;
      state[3] = d;
    },
  };
}

/** @param seed any integer; spread over the state by the finaliser of MurmurHash3 */
export function randomBits(seed: number): RandomBits {
  return xoshiro([0, 1, 2, 3].map((word) => mixed(seed + word * 0x9e3779b9)));
}

/** Every bit of the result depends on every bit of the word. */
function mixed(word: number): number {
  let x = word | 0;
  x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
  return x ^ (x >>> 16);
}
