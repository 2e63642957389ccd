import type { FieldFault } from "../api/fault.ts";
import type { AttributeName, Check, MeasuredInput } from "../api/types.ts";
import { atField } from "./atField.ts";
import { FIELD_NAMES, FIGURE_NAMES } from "./fields.ts";
import { figure } from "./figure.ts";
import { sentence } from "./plain.ts";

/** What follows the id of an input: " requires a value from 0 to 150 mm (its label): why; what to do, got 900". */
const OUT_OF_RANGE = / requires (.+?) \(.*\): (.+), got (\S+)$/;

/**
 * A message about a measured input, with the input's label in place of its id: "String to seat tube, left: a value from 0 to
 * 150 mm, not 900. Nothing else can be on a bicycle; measure again."
 */
export function labelled(message: string, { id, label }: Pick<MeasuredInput, "id" | "label">): string {
  if (!message.startsWith(`${id} `)) return message;
  return sentence(label + message.slice(id.length).replace(OUT_OF_RANGE, ": $1, not $3. $2"));
}

/** A message with its figures as they were typed, where the API takes them in another unit: 0.9 as 90 % by 100 and " %". */
function inUnit(message: string, times: number, unit: string): string {
  return message.replace(/\d+(?:\.\d+)?/g, (told) => `${figure(Number(told) * times, 2)}${unit}`);
}

/** The messages of a share that is typed in per cent, and of minutes typed in hours. */
export const inPercent = (message: string) => inUnit(message, 100, " %");
export const inHours = (message: string) => inUnit(message, 1 / 60, " h");

/** Fields that are typed in another unit than the API takes. */
const UNITS: Readonly<Record<string, (message: string) => string>> = {
  "/market/haggling": inPercent,
  "/find/soFar/minutes": inHours,
};

/** A figure that is typed, by its label; null for any other field. */
function figureRefused(pointer: string, message: string): string | null {
  const at = pointer.replace(/\/\d+(?=\/)/g, "/*");
  const label = FIGURE_NAMES[at as keyof typeof FIGURE_NAMES] as string | undefined;
  return label === undefined ? null : atField(label, UNITS[at]?.(message) ?? message);
}

/** A refused field by the name it has on the page: "Chain elongation. Length of 24 pitches requires at least 301.8 mm." */
export function refusal({ pointer, message }: FieldFault, checks: readonly Check[]): string {
  const typed = figureRefused(pointer, message);
  if (typed !== null) return typed;
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
