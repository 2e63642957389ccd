/** A word as it is compared: small letters, with one space for any run of spaces, hyphens and underlines. */
export function plainKey(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, " ");
}

/**
 * The known word that was probably meant: one that holds the given word ("90s" in "1990s"), or else the one that takes
 * the fewest insertions, deletions and replacements of a letter to reach. Null where that takes more than two, and more
 * than a third of the letters.
 */
export function nearest(word: string, known: readonly string[]): string | null {
  const wanted = plainKey(word);
  const holding = wanted.length < 2 ? undefined : known.find((one) => plainKey(one).includes(wanted));
  if (holding !== undefined) return holding;
  let best: string | null = null;
  let least = Math.max(2, wanted.length / 3) + 1e-9;
  for (const one of known) {
    const steps = editDistance(wanted, plainKey(one));
    if (steps <= least && (best === null || steps < least)) {
      best = one;
      least = steps;
    }
  }
  return best;
}

/** Edit distance by rows (Wagner and Fischer, "The string-to-string correction problem", 1974). */
function editDistance(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(above[j]! + 1, row[j - 1]! + 1, replaced));
    }
    above = row;
  }
  return above[b.length]!;
}
