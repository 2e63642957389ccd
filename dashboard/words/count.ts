const WORDS = [
  "none",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** A count in words up to twelve, in figures beyond. */
export function count(n: number): string {
  return WORDS[n] ?? String(n);
}

/** "one check", "four checks", "no checks". */
export function counted(n: number, one: string, many = `${one}s`): string {
  if (n === 0) return `no ${many}`;
  return `${count(n)} ${n === 1 ? one : many}`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The same text with a small first letter, to stand inside a sentence; an abbreviation (BMX) keeps its capitals. */
export function uncapital(text: string): string {
  return /^[A-Z]{2}/.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}

/** The same text in small letters throughout, abbreviations apart. */
export function small(text: string): string {
  return text.replace(/\S+/g, (word) => (/^[A-Z]{2}/.test(word) ? word : word.toLowerCase()));
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}
