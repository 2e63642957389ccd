/** A sign of minus before what it belongs to: a browser would break the line between it and the currency. */
const MINUS = /\u2212(?=\S)/g;

/** The same text with each minus on the line of its figure. */
export function unbroken(text: string): string {
  return text.replace(MINUS, "\u2212\u2060");
}
