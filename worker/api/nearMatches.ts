/** How many names are offered at most. */
const MOST_OFFERED = 3;
/** Letters that a second offer may lie farther off than the first. */
const MOST_FARTHER = 1;
/** Share of a name's letters that a misspelling may change: two letters swapped in a word of five. */
const MOST_APART = 0.4;

/**
 * The known names a misspelt one may stand for, nearest first: those that differ by few of their letters
 * (Levenshtein 1966: letters put in, left out or replaced), or where one is part of the other.
 */
export function nearMatches(word: string, known: readonly string[]): string[] {
  const near = known
    .map((name) => ({ name, away: distance(plain(word), plain(name)) }))
    .filter(
      ({ name, away }) => away <= MOST_APART * Math.max(word.length, name.length) || overlaps(word, name),
    )
    .sort((a, b) => a.away - b.away);
  const nearest = near[0]?.away ?? 0;
  const offered = near.filter(({ away }) => away <= nearest + MOST_FARTHER);
  return offered.slice(0, MOST_OFFERED).map(({ name }) => name);
}

/** "; did you mean rim-wall?" for a message, or nothing where no name comes near. */
export function didYouMean(word: string, known: readonly string[]): string {
  const names = nearMatches(word, known);
  return names.length === 0 ? "" : `; did you mean ${names.join(" or ")}?`;
}

/** Spelling without case, dashes and underscores, so that another custom of writing names is told. */
function plain(name: string): string {
  return name.toLowerCase().replaceAll(/[-_ ]/g, "");
}

function overlaps(word: string, name: string): boolean {
  return word.length > 3 && (name.includes(word) || (name.length > 3 && word.includes(name)));
}

/** Row by row over the second word; a long word is cut, since it is no misspelling. */
function distance(a: string, b: string): number {
  const word = a.slice(0, 40);
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= word.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = (row[j - 1] ?? 0) + (word[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return (row[b.length] ?? 0) + (a.length - word.length);
}
