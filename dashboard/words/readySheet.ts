/** Of the list to tick before anyone rides. */
export const BEFORE_RIDING_TITLE = "Before anyone rides it";
export const BEFORE_RIDING_PAPER = "not to be sold while it stands";
export const BEFORE_RIDING_CURED = "cured and looked at again";
export const BEFORE_RIDING_LOOKED = "looked at";

/** "Frame crack: cured and looked at again". */
export function toTick(check: string, what: string): string {
  return `${check}: ${what}`;
}
