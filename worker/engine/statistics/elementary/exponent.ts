/**
 * One number seen as its two halves of 32 binary digits (IEEE 754, binary64). The buffer is shared so that no call makes one; it holds no state: a
 * number written is read back in the same breath.
 */
const NUMBER = new Float64Array(1);
const WORDS = new Int32Array(NUMBER.buffer);

NUMBER[0] = 1;
/** Which half holds sign and exponent: the machine's byte order decides. */
const HIGH = WORDS[1] === 0 ? 0 : 1;

/** From the upper half of sqrt(1/2) to that of 1, so that the exponent turns over at sqrt(1/2) rather than 1. */
const TO_ONE = 0x3ff00000 - 0x3fe6a09e;

/**
 * The k for which x / 2^k lies between sqrt(1/2) and sqrt(2).
 * @param x positive, finite, not subnormal
 */
export function exponentOf(x: number): number {
  NUMBER[0] = x;
  return ((WORDS[HIGH]! + TO_ONE) >> 20) - 1023;
}
