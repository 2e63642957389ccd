const WIDTH = 110;
const STEP = "  ";

/**
 * A value as JSON text in the house's format: what fits on a line stays on it, long lists of numbers fill their lines,
 * all else takes a line an entry. So a generated table passes the same check of style as one written by hand.
 * @param room characters that the first line must leave for what stands before and after it
 */
export function jsonText(value: unknown, indent = "", room = 1): string {
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  const line = oneLine(value);
  if (!breaks(value) && indent !== "" && indent.length + room + line.length <= WIDTH) return line;
  const inner = indent + STEP;
  if (Array.isArray(value)) {
    const body = value.every((item) => typeof item === "number")
      ? filled(value, inner)
      : value.map((item) => inner + jsonText(item, inner)).join(",\n");
    return `[\n${body}\n${indent}]`;
  }
  const fields = Object.entries(value).map(([name, field]) => {
    const key = `${JSON.stringify(name)}: `;
    return inner + key + jsonText(field, inner, key.length + 1);
  });
  return `{\n${fields.join(",\n")}\n${indent}}`;
}

function oneLine(value: unknown): string {
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(oneLine).join(", ")}]`;
  const fields = Object.entries(value).map(([name, field]) => `${JSON.stringify(name)}: ${oneLine(field)}`);
  return fields.length === 0 ? "{}" : `{ ${fields.join(", ")} }`;
}

/** A list of several objects or lists never shares a line, nor does what holds one. */
function breaks(value: object): boolean {
  const items: unknown[] = Object.values(value);
  const manyFold = (item: unknown) =>
    item !== null && typeof item === "object" && Object.keys(item).length > 1;
  if (Array.isArray(value) && items.length > 1 && items.every(manyFold)) return true;
  return items.some((item) => item !== null && typeof item === "object" && breaks(item));
}

function filled(numbers: readonly number[], indent: string): string {
  const lines: string[] = [];
  let line = "";
  numbers.forEach((number, index) => {
    const item = index + 1 < numbers.length ? `${number},` : `${number}`;
    const longer = line === "" ? item : `${line} ${item}`;
    if (line !== "" && indent.length + longer.length > WIDTH) {
      lines.push(indent + line);
      line = item;
    } else line = longer;
  });
  return [...lines, indent + line].join("\n");
}
