/** How many finds a law is tried on: so many in the tests, several times as many where `npm run proof` runs the same laws. */
export function drawn(count: number): number {
  return count * Number(process.env.SPOKEWORTH_TIMES_DRAWN ?? 1);
}
