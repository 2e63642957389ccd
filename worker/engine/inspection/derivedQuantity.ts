import { DomainError } from "../domainError.ts";
import { amount } from "./amount.ts";
import { chainElongation } from "./chainElongation.ts";
import type { MeasuredInput, Measurement } from "./check.ts";
import { unitText } from "./measuredInputs.ts";
import { alignmentDifference, rearAxleOffset, type StringTest } from "./stringTest.ts";

/** What is held against the limits, and the same in words with its unit. */
export interface DerivedQuantity {
  readonly value: number;
  readonly text: string;
}

/** Decimals kept: enough for any reading, few enough to drop the noise of decimal fractions (130.2 - 129.2 is 1). */
const SCALE = 1e9;

/**
 * The quantity that a measurement's inputs come to.
 * @param measurement how it is derived
 * @param measured values by input id, already found possible one by one
 * @throws DomainError `impossible-measurement` where the values together cannot be
 */
export function derivedQuantity(
  measurement: Measurement,
  measured: Readonly<Record<string, number>>,
): DerivedQuantity {
  const { value, text } = derive(measurement, measured);
  return { value: Math.round(value * SCALE) / SCALE, text };
}

function derive(measurement: Measurement, measured: Readonly<Record<string, number>>): DerivedQuantity {
  const { derivation, inputs, unit } = measurement;
  switch (derivation.kind) {
    case "string-test":
      return stringTest(measured as unknown as StringTest, derivation.defaultRatio);
    case "elongation":
      return elongation(measured, inputs[0]!, derivation);
    case "absolute-difference": {
      const [a, b] = derivation.of;
      const value = Math.abs(measured[a]! - measured[b]!);
      return {
        value,
        text: `${capital(named(inputs, a, measured))}, ${named(inputs, b, measured)}: ${amount(value)}${unitText(unit)} apart`,
      };
    }
    case "surplus": {
      const [present, required] = derivation.of;
      const value = measured[present]! - measured[required]!;
      const way = value < 0 ? "short of" : "more than";
      return {
        value,
        text: `${amount(Math.abs(value))}${unitText(unit)} ${way} the least of ${amount(measured[required]!)}${unitText(unit)}`,
      };
    }
    case "value":
    case "bead-seat":
      return { value: measured[derivation.of]!, text: capital(named(inputs, derivation.of, measured)) };
  }
}

function stringTest(test: StringTest, defaultRatio: number): DerivedQuantity {
  const offset = rearAxleOffset(test, defaultRatio);
  const size = (Math.round(Math.abs(offset) * 10) / 10).toString();
  const side = offset > 0 ? "to the drive side" : "away from the drive side";
  return {
    value: alignmentDifference(test, defaultRatio),
    text: size === "0" ? "Rear end in line at the axle" : `Rear end ${size} mm ${side} at the axle`,
  };
}

function elongation(
  measured: Readonly<Record<string, number>>,
  { id }: MeasuredInput,
  derivation: Measurement["derivation"] & { kind: "elongation" },
): DerivedQuantity {
  const length = measured[id]!;
  const { pitches, pitch, shortestAllowedPercent } = derivation;
  try {
    const value = chainElongation(length, pitches, pitch, shortestAllowedPercent);
    return { value, text: `${amount(Math.abs(value))} % ${value < 0 ? "shorter" : "longer"} than new` };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    throw new DomainError(error.code, id, length, error.requirement, `measured/${id}`);
  }
}

function named(
  inputs: readonly MeasuredInput[],
  id: string,
  measured: Readonly<Record<string, number>>,
): string {
  const input = inputs.find((one) => one.id === id)!;
  return `${input.label} ${amount(measured[id]!)}${unitText(input.unit)}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
