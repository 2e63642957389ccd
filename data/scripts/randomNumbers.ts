/** A stream of pseudo-random numbers, evenly spread over 0 (included) to 1 (excluded). */
export type RandomNumbers = () => number;

/** Draws thrown away at the start, so that close seeds part ways. */
const WARM_UP = 20;

/**
 * The generator sfc32 (Doty-Humphrey, PractRand; public domain), made 32 bits a step: same seed, same numbers on every machine.
 * @param seed any whole number of 32 bits
 */
export function randomNumbers(seed: number): RandomNumbers {
  let [a, b, c, counter] = [seed | 0, 0x9e3779b9 | 0, 0x85ebca6b | 0, 1];
  const next = () => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    c |= 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let draw = 0; draw < WARM_UP; draw++) next();
  return next;
}
