import type { AppraisalBody, AttributeName, Choice, Reference } from "../api/types.ts";
import { capital, small } from "./count.ts";
import { priceWords } from "./money.ts";

/** What to show for a word of the description; the word itself where the catalogue does not know it. */
function labelOf(reference: Reference, attribute: AttributeName, value: string): string {
  const choices: readonly Choice[] | undefined = reference.attributes[attribute];
  return choices?.find((choice) => choice.value === value)?.label ?? value;
}

/** A name for a find that was given none: "Hybrid, 1990s". */
export function describedKind(
  attributes: Partial<Readonly<Record<AttributeName, string>>>,
  reference: Reference,
): string {
  const words = (["category", "era"] as const).flatMap((name) => {
    const value = attributes[name];
    return value === undefined ? [] : [labelOf(reference, name, value)];
  });
  return words.length === 0 ? "A find of your own" : capital(words.join(", "));
}

/** Attributes that a line about a find names, in order. */
const TOLD = [
  "category",
  "era",
  "frameMaterial",
  "componentTier",
  "sizeClass",
  "completeness",
  "kept",
] as const;

const SUFFIX: Partial<Record<AttributeName, (label: string) => string>> = {
  componentTier: (label) => `${label} tier`,
  sizeClass: (label) => `${label} size`,
  kept: (label) => `kept ${label}`,
};

/**
 * One line of facts: "Track or single-speed, 1980s, steel, upper tier. Asked: €40."
 * @param currency ISO 4217; null leaves the price out, for a find that is stopped
 */
export function factsLine(body: AppraisalBody, reference: Reference, currency: string | null): string {
  const words = TOLD.flatMap((name) => {
    const value = body.find[name];
    if (value === undefined) return [];
    const label = small(labelOf(reference, name, value));
    return [SUFFIX[name]?.(label) ?? label];
  });
  const { price, paid } = body.find.purchase ?? {};
  const bought =
    price === undefined || currency === null
      ? ""
      : ` ${paid === true ? "Paid" : "Asked"}: ${priceWords(price, currency)}.`;
  return `${capital(words.join(", "))}.${bought}`;
}
