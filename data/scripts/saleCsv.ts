import {
  type ComparableSale,
  PRICED_ATTRIBUTES,
  type SaleDescription,
  type SaleState,
} from "../../worker/engine/valuation/saleDescription.ts";

const HEADER = [
  ...PRICED_ATTRIBUTES,
  "originality",
  "desirability",
  "state",
  "condition",
  "asFound",
  "presentation",
  "papers",
  "month",
  "price",
] as const;

/** Sales as comma-separated text, one a line; condition is empty for a bike that does not ride. */
export function salesToCsv(sales: readonly ComparableSale[]): string {
  const lines = sales.map(({ description, price }) => {
    const { attributes, state, originality, desirability, asFound, presentation, papers, month } =
      description;
    return [
      ...PRICED_ATTRIBUTES.map((name) => attributes[name]),
      originality,
      desirability,
      state.kind,
      state.kind === "rides" ? state.condition : "",
      asFound ? "yes" : "no",
      presentation,
      papers,
      month,
      price,
    ].join(",");
  });
  return `${[HEADER.join(","), ...lines].join("\n")}\n`;
}

/** Reads back what salesToCsv writes. */
export function salesFromCsv(text: string): ComparableSale[] {
  const [header, ...lines] = text.trimEnd().split("\n");
  if (header !== HEADER.join(","))
    throw new Error(`demo sales need the header ${HEADER.join(",")}, got ${header}`);
  return lines.map((line, index) => saleFrom(line.split(","), index + 2));
}

function saleFrom(cells: readonly string[], line: number): ComparableSale {
  if (cells.length !== HEADER.length) {
    throw new Error(`line ${line} of the demo sales needs ${HEADER.length} cells, got ${cells.length}`);
  }
  const cell = (name: (typeof HEADER)[number]) => cells[HEADER.indexOf(name)]!;
  const kind = cell("state") as SaleState["kind"];
  const description = {
    attributes: Object.fromEntries(PRICED_ATTRIBUTES.map((name) => [name, cell(name)])),
    originality: Number(cell("originality")),
    desirability: Number(cell("desirability")),
    state: kind === "rides" ? { kind, condition: Number(cell("condition")) } : { kind },
    asFound: cell("asFound") === "yes",
    presentation: cell("presentation"),
    papers: cell("papers"),
    month: Number(cell("month")),
  };
  return { description: description as unknown as SaleDescription, price: Number(cell("price")) };
}
