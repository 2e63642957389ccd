/** Exponents of the smallest power of two there is, of the smallest that holds all digits, and of the largest. */
const LEAST = -1074;
const LEAST_NORMAL = -1022;
const MOST = 1023;

/** 2^k at [k + 1074], made by doubling and halving, which are exact. */
const POWERS = new Float64Array(MOST - LEAST + 1);
POWERS[-LEAST] = 1;
for (let k = 1; k <= MOST; k++) POWERS[k - LEAST] = POWERS[k - 1 - LEAST]! * 2;
for (let k = -1; k >= LEAST; k--) POWERS[k - LEAST] = POWERS[k + 1 - LEAST]! / 2;

/**
 * 2^k.
 * @param k whole, -1074 to 1023
 */
export function powerOfTwo(k: number): number {
  return POWERS[k - LEAST]!;
}

/**
 * x times 2^k, rounded once.
 * @param x between 1/2 and 2
 * @param k whole, -1100 to 1024
 */
export function timesPowerOfTwo(x: number, k: number): number {
  if (k > MOST) return x * 2 * powerOfTwo(k - 1);
  // There may be no such power: of the two steps only the last rounds.
  if (k < LEAST_NORMAL) return x * powerOfTwo(k + 100) * powerOfTwo(-100);
  return x * powerOfTwo(k);
}
