import type { AttributeDefault, Check, Measurement, Threshold } from "../api/types.ts";
import { type Described, holds, settled } from "./applies.ts";

/** The limits that hold on a bike: those of the first row whose conditions hold, else the usual ones. Ascending. */
export function limitsOn(measurement: Measurement, attributes: Described): readonly Threshold[] {
  return (
    measurement.thresholdsWhen.find(({ when }) => holds(when, attributes))?.thresholds ??
    measurement.thresholds
  );
}

/**
 * The value from which the cure of a check is needed, by the count of sprockets at the back.
 * @param rearSprockets undefined where nobody said
 * @returns null where the need does not depend on it
 */
export function neededAt(
  { neededFrom, measurement }: Pick<Check, "neededFrom" | "measurement">,
  rearSprockets: number | undefined,
): number | null {
  const row = neededFrom.find(({ sprocketsFrom, sprocketsTo, unknown }) =>
    rearSprockets === undefined ? unknown : rearSprockets >= sprocketsFrom && rearSprockets <= sprocketsTo,
  );
  return measurement?.thresholds.find(({ level }) => level === row?.level)?.from ?? null;
}

/** Where one level passes into the other, whichever is the higher; null where they do not meet. */
export function lineBetween(limits: readonly Threshold[], one: string, other: string): number | null {
  const at = (level: string) => limits.find((limit) => limit.level === level);
  const [a, b] = [at(one), at(other)];
  if (a === undefined || b === undefined) return null;
  return a.from !== null && a.from === b.below
    ? a.from
    : b.from !== null && b.from === a.below
      ? b.from
      : null;
}

/** The count of sprockets at the back: as given; one on a hub gear or a single speed; else unknown. */
export function sprocketsOf(
  described: Described,
  given: number | undefined,
  defaults: readonly AttributeDefault[],
): number | undefined {
  return given ?? (settled(described, defaults).drivetrain === "derailleur" ? undefined : 1);
}
