import { ERAS, type Era } from "../../engine/bicycle.ts";

/** The era a year of making falls in: the decade that begins with its name, "pre-1970" before the first. */
export function eraOfYear(year: number): Era {
  return ERAS.findLast((era) => year >= Number.parseInt(era, 10)) ?? "pre-1970";
}
