import type * as z from "zod";
import { didYouMean } from "./nearMatches.ts";

type RawIssue = z.core.$ZodRawIssue;

/**
 * The sentence for one thing wrong in a request, naming the field and the remedy: "year must be a number, not text".
 * Given to Zod as the error map of a parse, so a message written in a schema still comes first.
 * @returns undefined where Zod's own words do
 */
export function issueSentence(issue: RawIssue): string | undefined {
  const field = fieldName(issue.path ?? []);
  if (issue.input === undefined && issue.code !== "unrecognized_keys" && issue.code !== "custom") {
    return `${field} is missing${expectation(issue)}`;
  }
  switch (issue.code) {
    case "invalid_type":
      return `${field} must be ${described(issue.expected)}, not ${kindOf(issue.input)}`;
    case "invalid_value":
      return `${field} must be ${oneOf(issue.values)}, not ${shown(issue.input)}${meant(issue)}`;
    case "too_small":
      return `${field} must ${bound(issue, issue.minimum, issue.inclusive ? "at least" : "more than")}`;
    case "too_big":
      return `${field} must ${bound(issue, issue.maximum, issue.inclusive ? "at most" : "less than")}`;
    case "not_multiple_of":
      return `${field} must be a multiple of ${issue.divisor}`;
    case "invalid_key":
      return `${field} is not a name known here: correct it or leave it out`;
    case "invalid_union":
      return issue.discriminator === undefined
        ? `${field} has none of the forms accepted here`
        : `${issue.discriminator} does not name one of the forms accepted here`;
    default:
      return undefined;
  }
}

/** The last name on a path with the positions after it, "finds[3]"; the whole body where there is none. */
function fieldName(path: readonly PropertyKey[]): string {
  const start = path.findLastIndex((step) => typeof step === "string");
  if (start < 0) return path.length === 0 ? "the value" : `entry ${String(path.at(-1))}`;
  return path
    .slice(start)
    .map((step) => (typeof step === "number" ? `[${step}]` : String(step)))
    .join("");
}

/** What a misspelt value may stand for. */
function meant(issue: z.core.$ZodRawIssue<z.core.$ZodIssueInvalidValue>): string {
  const known = issue.values.filter((value) => typeof value === "string");
  return typeof issue.input === "string" ? didYouMean(issue.input, known) : "";
}

function expectation(issue: RawIssue): string {
  if (issue.code === "invalid_type") return `: give ${described(issue.expected)}`;
  if (issue.code === "invalid_value") return `: give ${oneOf(issue.values)}`;
  return "";
}

const KINDS: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  object: "an object",
  record: "an object",
  array: "a list",
  null: "null",
  undefined: "absent",
};

function described(expected: string): string {
  return KINDS[expected] ?? expected;
}

function kindOf(input: unknown): string {
  if (input === null) return "null";
  if (Array.isArray(input)) return "a list";
  // 1e999 is well-formed JSON and reads as Infinity.
  if (typeof input === "number") return Number.isFinite(input) ? String(input) : "a number too large to hold";
  return described(typeof input);
}

/** A value as it would be written in JSON, cut where it is long. */
function shown(input: unknown): string {
  if (typeof input === "object" && input !== null) return kindOf(input);
  const text = JSON.stringify(input) ?? kindOf(input);
  return text.length > 60 ? `${text.slice(0, 60)}...` : text;
}

/** A short list in words; a long one is left to "allowed". */
function oneOf(values: readonly unknown[]): string {
  if (values.length === 1) return shown(values[0]);
  if (values.length > 8) return 'one of the values in "allowed"';
  return `one of ${values.map(shown).join(", ")}`;
}

function bound(issue: RawIssue, limit: number | bigint, words: string): string {
  if (issue.origin === "string") return `have ${words} ${limit} characters`;
  if (issue.origin === "array" || issue.origin === "set") return `hold ${words} ${limit} entries`;
  return `be ${words} ${limit}, not ${shown(issue.input)}`;
}
