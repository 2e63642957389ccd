import { sentence } from "./plain.ts";

/**
 * A message that names its field by id, as the API does, with the field's label in its place: "weeks must be at least 1, not
 * 0" becomes "Weeks until it must be gone: must be at least 1, not 0.". Any other stays.
 */
export function atField(label: string, message: string): string {
  const told = /^[a-z][A-Za-z]* ((?:must|is missing)\b.*)$/s.exec(message)?.[1];
  return told === undefined ? message : sentence(`${label}: ${told}`);
}
