/** So many finds stand side by side. */
export const LEAST = 2;
export const MOST = 6;
/** So many on the first visit. */
const AT_FIRST = 4;

/**
 * The finds that stand side by side, in order.
 * @param kept ids chosen by the user; null where nothing was chosen yet
 * @param known ids of the finds there are
 * @param best ids of the finds that have figures, best earner first
 */
export function chosen(
  kept: readonly string[] | null,
  known: readonly string[],
  best: readonly string[],
): readonly string[] {
  if (kept === null) return best.slice(0, AT_FIRST);
  return kept.filter((id) => known.includes(id)).slice(0, MOST);
}

/** The same with a find added at the end or dropped; unchanged where that would be too many or too few. */
export function toggled(ids: readonly string[], id: string): readonly string[] {
  if (!ids.includes(id)) return ids.length < MOST ? [...ids, id] : ids;
  return ids.length > LEAST ? ids.filter((one) => one !== id) : ids;
}

/** The same with a copy right behind its original, both of them in it; the last of the others make room. */
export function withCopy(ids: readonly string[], original: string, copy: string): readonly string[] {
  const wide = ids.includes(original) ? [...ids] : [...ids, original];
  wide.splice(wide.indexOf(original) + 1, 0, copy);
  while (wide.length > MOST)
    wide.splice(
      wide.findLastIndex((id) => id !== original && id !== copy),
      1,
    );
  return wide;
}

/** The ids that were kept in the browser; null where none were, or nonsense. */
export function keptIds(value: unknown): readonly string[] | null {
  if (!Array.isArray(value)) return null;
  const ids = value.filter((id): id is string => typeof id === "string" && id !== "");
  return ids.length === 0 ? null : [...new Set(ids)];
}
