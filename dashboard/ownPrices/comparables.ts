import { daysBetween } from "./days.ts";
import { newestFirst } from "./newest.ts";
import { type KeptSale, MOST_SALES, type PartPrice } from "./sale.ts";
import { STATES } from "./saleWords.ts";
import { CHOICE_FIELDS, type ChoiceField, type Vocabulary } from "./vocabulary.ts";

/** A sale of the user's own as the API takes it beside a find. What is unknown is left out: it is averaged over. */
export interface Comparable extends Partial<Readonly<Record<ChoiceField, string>>> {
  /** Names it in the answer. */
  readonly id: string;
  /** More than 0, in the request's currency. */
  readonly price: number;
  readonly currency: string;
  readonly kind: "paid" | "asked";
  /** Whole days, 0 or more. */
  readonly ageDays: number;
  /** Same model as the find. */
  readonly likeThis?: true;
  readonly year?: number;
  readonly state?: string;
  readonly condition?: number;
  readonly originality?: number;
  readonly desirability?: number;
  /** 1 to 12. */
  readonly month: number;
}

/**
 * The kept sales as comparables for one find, the newest 5,000 at most, newest first. Those in another currency are left
 * out, and so is a word that the catalogue no longer holds.
 * @param finds ids of the find and of the one it was copied from: a sale of the same model as either counts so
 * @param today ISO 8601; how old each sale is follows from it
 * @param currency ISO 4217, of the request
 */
export function comparablesFor(
  sales: readonly KeptSale[],
  finds: readonly string[],
  { choices }: Pick<Vocabulary, "choices">,
  today: string,
  currency: string,
): readonly Comparable[] {
  return newestFirst(sales.filter((sale) => sale.currency === currency))
    .slice(0, MOST_SALES)
    .map((sale) => ({
      id: sale.id,
      price: sale.price,
      currency,
      kind: sale.kind,
      // A browser whose clock was put back would make a sale of today one of tomorrow.
      ageDays: Math.max(0, daysBetween(sale.date, today)),
      month: Number(sale.date.slice(5, 7)),
      ...(sale.sameModelAs?.some((id) => finds.includes(id)) ? { likeThis: true as const } : {}),
      ...words(sale, choices),
      ...figures(sale),
    }));
}

function words(
  sale: KeptSale,
  choices: Vocabulary["choices"],
): Partial<Record<ChoiceField | "state", string>> {
  const said: Partial<Record<ChoiceField | "state", string>> = {};
  for (const field of CHOICE_FIELDS) {
    // The API takes an era or a year; the year says more.
    if (field === "era" && sale.year !== undefined) continue;
    const word = sale[field];
    if (word !== undefined && choices[field].some(({ value }) => value === word)) said[field] = word;
  }
  if (STATES.some(({ value }) => value === sale.state)) said.state = sale.state as string;
  return said;
}

function figures(sale: KeptSale): Pick<Comparable, "year" | "condition" | "originality" | "desirability"> {
  const { year, originality, desirability, state } = sale;
  // Condition is that of a bike that rides: the API takes no other.
  const condition = state === undefined || state === "rides" ? sale.condition : undefined;
  return Object.fromEntries(
    Object.entries({ year, condition, originality, desirability }).filter(([, value]) => value !== undefined),
  );
}

/**
 * The price book as the API takes it. Prices in another currency and for parts that the catalogue no longer holds are
 * left out.
 * @param currency ISO 4217, of the request
 */
export function partPricesOf(
  prices: readonly PartPrice[],
  { parts }: Pick<Vocabulary, "parts">,
  currency: string,
): Readonly<Record<string, number>> {
  const known = new Set(parts.map(({ id }) => id));
  const sent = prices.filter((one) => one.currency === currency && known.has(one.part));
  return Object.fromEntries(sent.map(({ part, price }) => [part, price]));
}
