/**
 * The RFC 6901 JSON Pointer of a place in a document: "/" before each step, "~" written "~0" and "/" written "~1".
 * The empty path is the whole document, "".
 * @param path the steps from the root: member names and array positions (0 for the first)
 */
export function jsonPointer(path: readonly PropertyKey[]): string {
  return path.map((step) => `/${String(step).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}
