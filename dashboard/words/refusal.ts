import type { FieldFault } from "../api/fault.ts";
import type { AttributeName, Check, MeasuredInput } from "../api/types.ts";
import { capital } from "./count.ts";
import { FIELD_NAMES } from "./fields.ts";
import { sentence } from "./plain.ts";

/** A message about a measured input, with the input's label in place of its id. */
export function labelled(message: string, { id, label }: Pick<MeasuredInput, "id" | "label">): string {
  return message.startsWith(`${id} `) ? capital(`${label}${message.slice(id.length)}`) : message;
}

/** A refused field by the name it has on the page: "Chain elongation. Length of 24 pitches requires at least 301.8 mm." */
export function refusal({ pointer, message }: FieldFault, checks: readonly Check[]): string {
  const [part, name = "", ...rest] = pointer.split("/").slice(1);
  if (part === "observations") {
    const check = checks.find(({ id }) => id === name);
    const input = check?.measurement?.inputs.find(({ id }) => id === rest.at(-1));
    const told = input === undefined ? message : labelled(message, input);
    return check === undefined ? sentence(told) : `${check.name}. ${sentence(told)}`;
  }
  // They are sent newest first, as the page of one's own prices lists them.
  if (part === "comparables") {
    return /^\d+$/.test(name)
      ? `Your own sales, number ${Number(name) + 1} from the newest. ${sentence(message)}`
      : `Your own sales. ${sentence(message)}`;
  }
  const field = FIELD_NAMES[name as AttributeName] as string | undefined;
  return field === undefined ? sentence(message) : `${field} ${sentence(message)}`;
}
