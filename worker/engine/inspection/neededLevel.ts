import type { Attributes } from "../bicycle.ts";
import { DomainError } from "../domainError.ts";
import type { Check, LevelId } from "./check.ts";
import type { Dimensions } from "./find.ts";

/**
 * The mildest level at which the cure is needed, by the count of sprockets at the back: narrow chains are done sooner.
 * @param check a check with rows `neededFrom`
 * @param rearSprockets whole number, or undefined where it is not known
 * @returns null for a check whose need does not depend on the sprockets
 * @throws DomainError `inconsistent-table` where no row covers the count
 */
export function levelNeeded(check: Check, rearSprockets: number | undefined): LevelId | null {
  if (check.neededFrom.length === 0) return null;
  const row = check.neededFrom.find((one) =>
    rearSprockets === undefined
      ? one.unknown
      : rearSprockets >= one.sprocketsFrom && rearSprockets <= one.sprocketsTo,
  );
  if (row === undefined) {
    throw new DomainError(
      "inconsistent-table",
      check.id,
      rearSprockets,
      "a row for every count of sprockets",
    );
  }
  return row.level;
}

/** The count of sprockets at the back: as given; one on a hub gear or a single speed; else unknown. */
export function rearSprockets(attributes: Attributes, dimensions: Dimensions): number | undefined {
  return dimensions.rearSprockets ?? (attributes.drivetrain === "derailleur" ? undefined : 1);
}
