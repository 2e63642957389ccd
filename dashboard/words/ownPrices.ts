import type { Choice } from "../api/types.ts";
import type { Sale } from "../ownPrices/sale.ts";
import { CONDITIONS, KINDS, STATES } from "../ownPrices/saleWords.ts";
import type { ChoiceField, Vocabulary } from "../ownPrices/vocabulary.ts";
import { capital, small } from "./count.ts";
import { dayWords } from "./day.ts";
import { grouped } from "./figure.ts";

/** A count in figures with its noun: "1 sale", "1,204 sales", "no sale". */
export function many(n: number, one: string, more = `${one}s`): string {
  return n === 0 ? `no ${one}` : `${grouped(n)} ${n === 1 ? one : more}`;
}

/** "12 sales of your own, 3 prices of your own; the rest is invented". */
export function pricesTitle(sales: number, prices: number): string {
  if (sales + prices === 0) return "No sale and no price of your own yet; all of them are invented";
  const parts = [
    sales > 0 ? `${many(sales, "sale")} of your own` : "",
    prices > 0 ? `${many(prices, "price")} of your own` : "",
  ].filter((part) => part !== "");
  return `${parts.join(", ")}; the rest is invented`;
}

function label(choices: readonly Choice[], value: string): string {
  return choices.find((choice) => choice.value === value)?.label ?? value;
}

/** What a sale is called: its name, or else what it is. */
export function saleName(sale: Sale, { choices }: Pick<Vocabulary, "choices">): string {
  if (sale.name !== undefined) return sale.name;
  const kind = sale.category === undefined ? "" : label(choices.category, sale.category);
  return kind === "" ? "A bicycle" : kind;
}

const TOLD = ["era", "frameMaterial", "componentTier", "sizeClass", "place"] as const satisfies ChoiceField[];
const SUFFIX: Partial<Record<ChoiceField, string>> = { componentTier: " tier", sizeClass: " size" };

/** What is known of a sale beside its name and price: "Paid, 3 May 2026; hybrid, 1990s, steel". */
export function saleFacts(sale: Sale, { choices }: Pick<Vocabulary, "choices">): string {
  const kind =
    sale.name !== undefined && sale.category !== undefined ? label(choices.category, sale.category) : "";
  const told = TOLD.flatMap((field) => {
    const value = field === "era" && sale.year !== undefined ? String(sale.year) : sale[field];
    return value === undefined ? [] : [`${label(choices[field], value)}${SUFFIX[field] ?? ""}`];
  });
  const state = sale.state === undefined || sale.state === "rides" ? "" : label(STATES, sale.state);
  const condition = sale.condition === undefined ? "" : label(CONDITIONS, nearest(sale.condition));
  const rest = [kind, ...told, state, condition].filter((one) => one !== "").map(small);
  const when = `${capital(label(KINDS, sale.kind))}, ${dayWords(sale.date)}`;
  return rest.length === 0 ? when : `${when}; ${rest.join(", ")}`;
}

/** The condition in words that a share lies nearest to. */
function nearest(condition: number): string {
  const far = ({ value }: Choice) => Math.abs(Number(value) - condition);
  return CONDITIONS.reduce((best, one) => (far(one) < far(best) ? one : best)).value;
}

/** What came of reading a file, in a sentence: "8 sales added; 1 kept before; 2 rows not kept." */
export function fileSentence(
  kind: "sales" | "price-book",
  counts: {
    readonly added: number;
    readonly already: number;
    readonly over: number;
    readonly rejected: number;
    readonly twice: number;
    readonly examples: number;
  },
): string {
  const noun = kind === "sales" ? "sale" : "price";
  return `${capital(
    [
      `${many(counts.added, noun)} added`,
      counts.already > 0 ? `${many(counts.already, "row")} kept before` : "",
      counts.over > 0 ? `${many(counts.over, "row")} left out: there is room for 5,000 sales` : "",
      counts.rejected > 0 ? `${many(counts.rejected, "row")} not kept` : "",
      counts.twice > 0 ? `${many(counts.twice, "row")} said twice and kept once` : "",
      counts.examples > 0 ? "the invented example left out" : "",
    ]
      .filter((part) => part !== "")
      .join("; "),
  )}.`;
}
