import { isRecord } from "../answers/parsed.ts";
import { isoDay } from "./days.ts";
import type { KeptSale, PartPrice } from "./sale.ts";
import { CHOICE_FIELDS } from "./vocabulary.ts";

/** Everything of the user's own that is kept about prices. */
export interface Contents {
  readonly sales: readonly KeptSale[];
  readonly partPrices: readonly PartPrice[];
}

export const NO_CONTENTS: Contents = { sales: [], partPrices: [] };
export const VERSION = 1;

/**
 * What was kept in the browser, which may be older than this page, or damaged: a sale or a price without what each
 * needs is left out, and so is an attribute that is not of its kind. Null where it is nothing of ours at all.
 */
export function contentsIn(value: unknown): Contents | null {
  if (!isRecord(value) || value.version !== VERSION) return null;
  if (!Array.isArray(value.sales) || !Array.isArray(value.partPrices)) return null;
  return { sales: value.sales.flatMap(saleIn), partPrices: value.partPrices.flatMap(partPriceIn) };
}

const TEXTS = ["name", "state", ...CHOICE_FIELDS] as const;
const SHARES = ["condition", "originality", "desirability"] as const;

function saleIn(value: unknown): KeptSale[] {
  if (!isRecord(value)) return [];
  const { id, price, currency, kind, date, year, sameModelAs } = value;
  if (!isText(id) || !isPrice(price) || !isText(currency)) return [];
  if ((kind !== "paid" && kind !== "asked") || !isText(date) || !isoDay(date)) return [];
  const rest: Record<string, unknown> = {};
  for (const key of TEXTS) if (isText(value[key])) rest[key] = value[key];
  for (const key of SHARES) if (isShare(value[key])) rest[key] = value[key];
  if (Number.isInteger(year)) rest.year = year;
  if (Array.isArray(sameModelAs) && sameModelAs.length > 0) rest.sameModelAs = sameModelAs.filter(isText);
  return [{ ...rest, id, price, currency, kind, date }];
}

function partPriceIn(value: unknown): PartPrice[] {
  if (!isRecord(value)) return [];
  const { part, price, currency } = value;
  return isText(part) && isPrice(price) && isText(currency) ? [{ part, price, currency }] : [];
}

function isText(value: unknown): value is string {
  return typeof value === "string" && value !== "";
}

function isPrice(value: unknown): value is number {
  return typeof value === "number" && Number.isFinite(value) && value > 0;
}

function isShare(value: unknown): value is number {
  return typeof value === "number" && value >= 0 && value <= 1;
}
