import type { Reference } from "../api/types.ts";
import { capital } from "../words/count.ts";
import { type LengthUnit, lengthsFor, withLengths } from "../words/length.ts";
import { levelWords } from "../words/plain.ts";

/** Names and words of the catalogue, by id; the id itself where the catalogue does not hold it. */
export interface Names {
  check(id: string): string;
  operation(id: string): string;
  /** What a level of a check means. */
  level(check: string, level: string): string;
  /** A sentence of the API's about a check, with its lengths in the user's unit. */
  inUnit(check: string, text: string): string;
  /** The same in a word or two, as it is to press. */
  short(check: string, level: string): string;
  /** A check or an operation. */
  any(id: string): string;
  /** Whether a check is about papers: what blocks there blocks the sale, not the ride. */
  isPaper(check: string): boolean;
}

/** @param unit how lengths are shown in what levels mean */
export function namesIn(
  { checks, operations }: Pick<Reference, "checks" | "operations">,
  unit: LengthUnit = "mm",
): Names {
  const check = new Map(checks.map((one) => [one.id, one]));
  const operation = new Map(operations.map(({ id, name }) => [id, name]));
  const nameOf = (id: string) => check.get(id)?.name ?? id;
  const inUnit = (id: string, text: string) => {
    const known = check.get(id);
    return withLengths(text, known === undefined ? unit : lengthsFor(known, unit));
  };
  return {
    check: nameOf,
    operation: (id) => operation.get(id) ?? id,
    level: (id, level) =>
      capital(inUnit(id, check.get(id)?.levels.find((one) => one.id === level)?.description ?? level)),
    inUnit,
    short: (id, level) => levelWords(check.get(id) ?? { levels: [] }, level),
    any: (id) => operation.get(id) ?? nameOf(id),
    isPaper: (id) => check.get(id)?.group === "paperwork",
  };
}
