import type { ListingCatalogue, Say, SentenceKey } from "./catalogue.ts";
import type { FaultWords } from "./faultWords.ts";
import type { Roadworthiness } from "./roadworthiness.ts";
import type { SaleState } from "./saleStates.ts";

const SOLD: Readonly<Record<SaleState, SentenceKey>> = {
  asFound: "soldAsFound",
  madeSafe: "soldMadeSafe",
  restored: "soldRestored",
  parts: "soldParts",
};

/** The title: whether it may be ridden comes before what it is. */
export function titleOf(what: string, state: SaleState, road: Roadworthiness, say: Say): string {
  if (road.endsFrame.length > 0) return say("titleFrameWithdrawn", { what });
  if (state === "parts") return say("titleParts", { what });
  return say(road.clear ? "title" : "titleNotRoadworthy", { what });
}

/** The first lines: the warning where there is one, then how it is sold. */
export function openingLines(
  state: SaleState,
  road: Roadworthiness,
  words: FaultWords,
  invented: boolean,
  say: Say,
): readonly string[] {
  const free = road.cured ? "openingCured" : "openingClear";
  const first = state === "parts" ? "openingParts" : road.clear ? free : "openingNotRoadworthy";
  const owed = state !== "parts" && road.owedToRide.length > 0;
  return [
    say(first),
    ...(road.endsFrame.length > 0
      ? [say("openingFrameWithdrawn", { faults: road.endsFrame.map(words.name) })]
      : []),
    ...(owed ? [say("openingOwed", { checks: road.owedToRide.map(words.check) })] : []),
    ...(road.unproven ? [say("openingUnproven")] : []),
    say(SOLD[state]),
    ...(state === "parts" && road.stopsRiding.length > 0 ? [say("soldPartsFaults")] : []),
    ...(invented ? [say("invented")] : []),
  ];
}

/** The cautions that bear on a buyer of this. */
export function buyerLines(state: SaleState, road: Roadworthiness, say: Say): readonly string[] {
  if (state === "parts") return [say("buyerLaw"), say("buyerPieces")];
  return [
    say("buyerLaw"),
    say("buyerMechanic"),
    say(road.clear ? "buyerTestRide" : "buyerTransport"),
    say("buyerSeat"),
  ];
}

/**
 * The asking price with its currency, to the cent where it has cents; null where none is set.
 * @param currency ISO 4217
 */
export function priceOf(
  asked: number | undefined,
  currency: string,
  { locale }: ListingCatalogue,
): string | null {
  if (asked === undefined || !Number.isFinite(asked) || asked < 0) return null;
  // Euro and pound are told by their sign; several countries write $, so there the code stands.
  const currencyDisplay = ["EUR", "GBP"].includes(currency) ? "symbol" : "code";
  const whole = Number.isInteger(asked) ? { maximumFractionDigits: 0 } : {};
  return new Intl.NumberFormat(locale, { style: "currency", currency, currencyDisplay, ...whole }).format(
    asked,
  );
}
