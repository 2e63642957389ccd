const DAY_MS = 86_400_000;

/** Whether a text is a day of the calendar, written YYYY-MM-DD (ISO 8601). */
export function isoDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const at = new Date(`${text}T00:00:00Z`);
  // Some engines roll 30 February over into March: only a day that stays as written exists.
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(text);
}

/** Whole days from one ISO day to a later one; negative where it is earlier. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

/** The day it is where the user is, as YYYY-MM-DD. */
export function localDay(now: Date): string {
  const two = (n: number) => String(n).padStart(2, "0");
  return `${String(now.getFullYear()).padStart(4, "0")}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
