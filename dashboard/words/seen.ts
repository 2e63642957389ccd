/** What stands on a fault until it is cured. */
export const NOT_TO_BE_SOLD = "not to be sold";
export const NOT_TO_BE_RIDDEN = "not to be ridden";
/** The mark of a reading that lies between two levels. */
export const ON_THE_LINE = "on the line";

/**
 * "Bear in mind (2)", on the fold with the soft cautions.
 * @param also hard ones stand before it
 */
export function bearInMind(soft: number, also = false): string {
  return `${also ? "Also bear in mind" : "Bear in mind"} (${soft})`;
}
