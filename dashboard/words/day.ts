import { locale } from "./locale.ts";

/**
 * A day as the locale writes it. In English with the name of the month ("3 May 2026"); elsewhere in figures
 * ("03.05.2026"), since a German month would tear an English sentence.
 * @param iso YYYY-MM-DD
 */
export function dayWords(iso: string): string {
  const [year = 0, month = 1, day = 1] = iso.split("-").map(Number);
  const english = /^en\b/.test(locale());
  const format = new Intl.DateTimeFormat(locale(), {
    year: "numeric",
    month: english ? "long" : "2-digit",
    day: english ? "numeric" : "2-digit",
    timeZone: "UTC",
  });
  // Set by parts: a year below 100 is taken for one of the last century elsewhere.
  const at = new Date(0);
  at.setUTCFullYear(year, month - 1, day);
  return format.format(at).replace(/[\u061c\u200e\u200f]/g, "");
}
