/** Rows that say the same have the same key, whatever the order of their fields. */
export function rowKey(row: object): string {
  return JSON.stringify(Object.entries(row).sort(([a], [b]) => (a < b ? -1 : 1)));
}
