import { capital } from "./count.ts";

/** An id of the catalogue as a word to press: "stuck-cut" becomes "Stuck cut", "ok" is written as it is spoken. */
export function plain(id: string): string {
  return id === "ok" ? "OK" : capital(id.replaceAll("-", " "));
}

/** A level of a check as words to press: its label, or else its id. */
export function levelWords(
  { levels }: { readonly levels: readonly { readonly id: string; readonly label?: string }[] },
  level: string,
): string {
  return levels.find(({ id }) => id === level)?.label ?? plain(level);
}

/** A sentence, or several, each with its capital and the last with its full stop. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  if (trimmed === "") return "";
  const begun = capital(trimmed).replace(/\. [a-z]/g, (start) => start.toUpperCase());
  return /[.?]$/.test(begun) ? begun : `${begun}.`;
}
