/**
 * A number in plain words for a note: at most two decimals, no trailing noughts, no minus nought.
 * The same number always gives the same text.
 */
export function amount(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}
