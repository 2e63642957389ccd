import { capital } from "./count.ts";

/** An id of the catalogue as a word to press: "stuck-cut" becomes "Stuck cut". */
export function plain(id: string): string {
  return capital(id.replaceAll("-", " "));
}

/** A sentence, or several, each with its capital and the last with its full stop. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  if (trimmed === "") return "";
  const begun = capital(trimmed).replace(/\. [a-z]/g, (start) => start.toUpperCase());
  return /[.?]$/.test(begun) ? begun : `${begun}.`;
}
