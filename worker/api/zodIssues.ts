import type * as z from "zod";
import { fieldsAt } from "./fieldsAt.ts";
import { jsonPointer } from "./jsonPointer.ts";
import { didYouMean } from "./nearMatches.ts";
import type { FieldError } from "./problem.ts";

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** Faults told at most: an answer stays short, and no body, however wrong, costs long. */
export const MOST_FAULTS = 100;

/**
 * What a schema found wrong, one entry a field, as the `errors` of problem details; the first hundred.
 * Unknown fields are named one by one; of a union, the form the input came closest to speaks.
 * @param error what parsing threw or returned
 * @param schema the schema that was parsed with; from it come the fields known where an unknown one stands
 */
export function zodIssuesToErrors(error: z.ZodError, schema: z.ZodType): FieldError[] {
  const errors: FieldError[] = [];
  for (const issue of error.issues) {
    errors.push(...errorsOf(issue, [], schema));
    if (errors.length >= MOST_FAULTS) break;
  }
  return errors.slice(0, MOST_FAULTS);
}

function errorsOf(issue: Issue, above: Path, schema: z.ZodType): FieldError[] {
  const path = [...above, ...issue.path];
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.slice(0, MOST_FAULTS).map((key) => unknownField(path, key, schema));
    case "invalid_union": {
      const closest = closestForm(issue.errors);
      if (closest === undefined) return [fieldError(path, issue.message)];
      return closest.flatMap((inner) => errorsOf(inner, path, schema));
    }
    case "invalid_value":
      return [fieldError(path, issue.message, issue.values)];
    case "invalid_key":
      return [unknownName(path, issue)];
    default:
      return [fieldError(path, issue.message)];
  }
}

function fieldError(path: Path, message: string, allowed: readonly unknown[] = []): FieldError {
  const values = allowed.filter(isJsonScalar);
  return { pointer: jsonPointer(path), message, ...(values.length > 0 ? { allowed: values } : {}) };
}

function unknownField(path: Path, key: string, schema: z.ZodType): FieldError {
  const known = fieldsAt(schema, path);
  const message = `${shortened(key)} is not a field known here: correct its spelling or leave it out`;
  return fieldError([...path, key], message + didYouMean(key, known), known);
}

/** A name in a list of names that is none of those it may be. */
function unknownName(path: Path, issue: z.core.$ZodIssueInvalidKey): FieldError {
  const known = issue.issues.flatMap((one) => (one.code === "invalid_value" ? one.values : [])).map(String);
  return fieldError(path, issue.message + didYouMean(String(path.at(-1)), known), known);
}

function shortened(name: string): string {
  return name.length > 60 ? `${name.slice(0, 60)}...` : name;
}

function isJsonScalar(value: unknown): value is string | number | boolean | null {
  return (
    value === null || typeof value === "string" || typeof value === "number" || typeof value === "boolean"
  );
}

/**
 * Of a union's forms, the one the input came closest to: of the right kind at its root, knowing most of its fields,
 * with the fewest faults. None where the input is of no form's kind.
 */
function closestForm(forms: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  const ofItsKind = forms.filter((issues) => !issues.some(isWrongKind));
  return ofItsKind.toSorted((a, b) => unknownAtRoot(a) - unknownAtRoot(b) || a.length - b.length)[0];
}

function unknownAtRoot(issues: readonly Issue[]): number {
  const keys = issues.flatMap((one) =>
    one.code === "unrecognized_keys" && one.path.length === 0 ? one.keys : [],
  );
  return keys.length;
}

function isWrongKind(issue: Issue): boolean {
  return issue.code === "invalid_type" && issue.path.length === 0;
}
