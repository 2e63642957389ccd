import type { Measurement } from "../api/types.ts";
import { elongation } from "./chainRuler.ts";

/** Readings by input id; some may still be missing. */
export type Readings = Readonly<Record<string, number>>;

/** Head tube to seat tube over head tube to axle: as measured where that can be, else the usual ratio. */
export function ratioOf({ headToSeatTube, headToAxle }: Readings, usual: number): number {
  const known = headToSeatTube !== undefined && headToAxle !== undefined;
  return known && headToSeatTube > 0 && headToSeatTube < headToAxle ? headToSeatTube / headToAxle : usual;
}

/** The readings where a bicycle can have them all; none where one is impossible: it is refused, and there is nothing to draw. */
export function possibleReadings({ inputs }: Pick<Measurement, "inputs">, readings: Readings): Readings {
  return inputs.some(({ id, min, max }) => readings[id]! < min || readings[id]! > max) ? {} : readings;
}

/**
 * The quantity that a drawing marks on its scale, from readings as they are typed: what the API holds against the limits.
 * It only places a mark; what it means is the answer's to say.
 * @returns undefined while a reading is missing
 */
export function derivedValue(
  { derivation }: Pick<Measurement, "derivation">,
  readings: Readings,
): number | undefined {
  const both = (a: string, b: string, join: (a: number, b: number) => number) => {
    const [one, other] = [readings[a], readings[b]];
    return one === undefined || other === undefined ? undefined : join(one, other);
  };
  switch (derivation.kind) {
    case "string-test": {
      const usual = derivation.defaultRatio;
      return both(
        "left",
        "right",
        (left, right) => (Math.abs(right - left) * usual) / ratioOf(readings, usual),
      );
    }
    case "elongation": {
      const [length] = Object.values(readings);
      return length === undefined ? undefined : elongation({ length, ...derivation });
    }
    case "absolute-difference":
      return both(...derivation.of, (a, b) => Math.abs(a - b));
    case "surplus":
      return both(...derivation.of, (present, required) => present - required);
    case "value":
    case "bead-seat":
      return readings[derivation.of];
  }
}
