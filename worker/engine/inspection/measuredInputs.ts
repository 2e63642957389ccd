import { DomainError } from "../domainError.ts";
import type { MeasuredInput } from "./check.ts";

/** How a unit is written behind a number; a count has none. */
export function unitText(unit: string): string {
  return unit === "count" ? "" : ` ${unit}`;
}

/**
 * Refuses measured values that no bicycle can have. Pointers are relative to the reading: "measured/left".
 * @throws DomainError `unknown-id` for an input the check does not have; `impossible-measurement` for one that is missing,
 * not a number, out of its possible range, or a count that is not whole
 */
export function requirePossible(
  inputs: readonly MeasuredInput[],
  measured: Readonly<Record<string, number>>,
): void {
  for (const id of Object.keys(measured)) {
    if (!inputs.some((input) => input.id === id)) {
      const allowed = inputs.map((input) => input.id).join(", ");
      throw new DomainError("unknown-id", "measured", id, `one of ${allowed}`, `measured/${escaped(id)}`);
    }
  }
  for (const input of inputs) {
    const value = Object.hasOwn(measured, input.id) ? measured[input.id] : undefined;
    if (value === undefined ? !input.optional : !possible(input, value)) throw refusal(input, value);
  }
}

function possible({ unit, min, max }: MeasuredInput, value: number): boolean {
  return value >= min && value <= max && (unit !== "count" || Number.isInteger(value));
}

function refusal({ id, label, unit, min, max }: MeasuredInput, value: number | undefined): DomainError {
  const kind = unit === "count" ? "a whole number" : "a value";
  const reason = value === undefined ? "without it there is no reading" : "nothing else can be on a bicycle";
  return new DomainError(
    "impossible-measurement",
    id,
    value,
    `${kind} from ${min} to ${max}${unitText(unit)} (${label}): ${reason}; measure again`,
    `measured/${id}`,
  );
}

/** A name inside a JSON pointer (RFC 6901). */
export function escaped(name: string): string {
  return /[~/]/.test(name) ? name.replaceAll("~", "~0").replaceAll("/", "~1") : name;
}
