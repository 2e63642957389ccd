import type { SubmittedFind } from "../engine/portfolio/comparison.ts";
import { invalidFields } from "./invalidFields.ts";
import { issueSentence } from "./issueSentence.ts";
import { jsonPointer } from "./jsonPointer.ts";
import type { FieldError, Problem } from "./problem.ts";
import type { ComparisonSchemas, ParsedComparison, ParsedEntry } from "./schemas/comparisonRequest.ts";
import { currencyFaults } from "./schemas/currencyFaults.ts";
import { zodIssuesToErrors } from "./zodIssues.ts";

/** A find as it was sent: as the engine takes it, or what is wrong with it. */
export type Submission =
  | { readonly submitted: SubmittedFind }
  | { readonly id: string; readonly problem: Problem };

/**
 * Parses the finds of a request one by one. A find without a label goes by its pointer in the request; of two with the same label the second is
 * refused.
 * @param tables currency of the tables
 */
export function submittedFinds(
  request: ParsedComparison,
  entry: ComparisonSchemas["entry"],
  tables: string,
): readonly Submission[] {
  const taken = new Map<string, string>();
  return request.finds.map((sent, index) => {
    const pointer = jsonPointer(["finds", index]);
    const id = labelOf(sent) ?? pointer;
    const first = taken.get(id);
    if (first !== undefined) return { id: pointer, problem: invalidFields([sameLabel(pointer, id, first)]) };
    taken.set(id, pointer);
    const parsed = entry.safeParse(sent, { error: issueSentence });
    const errors = parsed.success
      ? otherCurrencies(request, parsed.data, tables)
      : zodIssuesToErrors(parsed.error, entry);
    if (!parsed.success || errors.length > 0)
      return { id, problem: invalidFields(errors.map((one) => below(pointer, one))) };
    return { submitted: submit(id, request, parsed.data) };
  });
}

function submit(id: string, request: ParsedComparison, entry: ParsedEntry): SubmittedFind {
  const { currency, comparables = [] } = request;
  const { find, observations, month, course = null } = entry;
  const workshop = month === undefined ? request.workshop : { ...request.workshop, month };
  const own = entry.comparables ?? [];
  return {
    id,
    course,
    request: { currency, workshop, find, observations, comparables: [...own, ...comparables] },
  };
}

function otherCurrencies(
  { currency, workshop }: ParsedComparison,
  { comparables }: ParsedEntry,
  tables: string,
): FieldError[] {
  return currencyFaults({ currency, workshop, comparables, tables }).map(({ path, message }) => ({
    pointer: jsonPointer(path),
    message,
  }));
}

/** What a find calls itself, whatever else is wrong with it. */
function labelOf(sent: unknown): string | null {
  const label = fieldOf(fieldOf(sent, "find"), "id");
  return typeof label === "string" && label !== "" ? label : null;
}

function fieldOf(value: unknown, name: string): unknown {
  return typeof value === "object" && value !== null ? (value as Record<string, unknown>)[name] : undefined;
}

function sameLabel(pointer: string, id: string, first: string): FieldError {
  const message = `id ${JSON.stringify(id)} is the label of ${first} as well: give each find a label of its own or leave it out`;
  return { pointer: `${pointer}/find/id`, message };
}

/** The workshop stands in the request, beside the finds. */
function below(pointer: string, error: FieldError): FieldError {
  return error.pointer.startsWith("/workshop") ? error : { ...error, pointer: pointer + error.pointer };
}
