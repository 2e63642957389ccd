import { ERAS, type Era, TIERS, type Tier } from "../../worker/engine/bicycle.ts";
import { normalQuantile } from "../../worker/engine/statistics/standardNormal.ts";
import { termHolds } from "../../worker/engine/valuation/bikeClass.ts";
import type {
  ComparableSale,
  PricedAttributes,
  SaleDescription,
  SaleState,
} from "../../worker/engine/valuation/saleDescription.ts";
import { PRICED_CATEGORIES } from "../../worker/engine/valuation/valueLayout.ts";
import { type Deck, shuffledDeck } from "./deck.ts";
import { type RandomNumbers, randomNumbers } from "./randomNumbers.ts";
import { logWidth, trueLogMedian, type ValueDrivers } from "./valueDrivers.ts";

/** Any fixed number: the sales are drawn once and kept. */
export const SEED = 20260401;

/** Sales in each cell of category and tier: more where prices scatter more or more is sold. */
const SALES_BY_TIER: Readonly<Record<Tier, number>> = { entry: 130, mid: 150, upper: 150, top: 200 };
const SALES_BY_CATEGORY: Readonly<Record<string, number>> = {
  "road-racing": 2.5,
  "mountain-rigid": 1.5,
  hybrid: 1.5,
};

const STATES: readonly SaleState["kind"][] = [
  "rides",
  "does-not-ride",
  "major-parts-missing",
  "frame-and-fork",
];

/**
 * Draws the invented sales: every cell of category and tier equally often (times its weight), every era, state, size
 * and so on in fixed proportions within a cell and shuffled, so that no driver rests on a handful of sales.
 * Price = true median x exp(normal noise), the noise as wide as the drivers' spread says and in mirrored pairs within a kind, tier and era.
 */
export function drawSales(drivers: ValueDrivers, seed: number = SEED): ComparableSale[] {
  const random = randomNumbers(seed);
  return PRICED_CATEGORIES.flatMap((category) =>
    TIERS.flatMap((tier) => {
      const count = Math.round(SALES_BY_TIER[tier] * (SALES_BY_CATEGORY[category] ?? 1));
      const draw = cellOf(category, tier, random);
      const noise = mirroredNoise(random);
      return Array.from({ length: count }, () => priced(drivers, draw(), noise));
    }),
  );
}

/** A source of descriptions for one cell of category and tier. */
function cellOf(category: string, tier: Tier, random: RandomNumbers): () => SaleDescription {
  const deal = <Card>(cards: Deck<Card>) => shuffledDeck(cards, random);
  const era = deal<Era>(ERAS.map((one) => [one, 1]));
  const material = Object.fromEntries(ERAS.map((one) => [one, deal(materials(one))]));
  const size = deal<PricedAttributes["sizeClass"]>([
    ["very-small", 1],
    ["small", 2],
    ["middle", 4],
    ["large", 2],
    ["very-large", 1],
  ]);
  const place = deal<PricedAttributes["place"]>([
    ["city", 1],
    ["town", 1],
    ["rural", 1],
  ]);
  const stepThrough = deal<PricedAttributes["stepThrough"]>([
    ["yes", 1],
    ["no", 1],
  ]);
  const drivetrain = deal<PricedAttributes["drivetrain"]>([
    ["derailleur", 2],
    ["hub-gear", 2],
    ["single-speed", 1],
  ]);
  const state = deal<SaleState["kind"]>([
    [STATES[0]!, 8],
    [STATES[1]!, 2],
    [STATES[2]!, 1],
    [STATES[3]!, 1],
  ]);
  const condition = deal<number | "any">([
    [0, 3],
    [0.45, 2],
    [0.75, 3],
    [1, 5],
    ["any", 3],
  ]);
  const originality = deal<number | "any">([
    [0, 1],
    [0.5, 1],
    [0.8, 2],
    [1, 2],
    ["any", 1],
  ]);
  const presentation = deal<SaleDescription["presentation"]>([
    ["full", 2],
    ["plain", 2],
    ["poor", 1],
  ]);
  const papers = deal<SaleDescription["papers"]>([
    ["receipt", 1],
    ["bill", 2],
    ["none", 1],
  ]);
  const month = deal(Array.from({ length: 12 }, (_, index) => [index + 1, 1] as const));
  const share = (card: number | "any") =>
    typeof card === "number" ? card : Math.round(random() * 100) / 100;
  return () => {
    const decade = era();
    const kind = state();
    const rides = kind === "rides";
    const asFound = !rides || random() < 0.2;
    return {
      attributes: {
        category: category as PricedAttributes["category"],
        componentTier: tier,
        era: decade,
        frameMaterial: material[decade]!(),
        sizeClass: size(),
        place: place(),
        stepThrough: stepThrough(),
        drivetrain: drivetrain(),
      },
      originality: share(originality()),
      desirability: random() < 0.5 ? 0 : Math.round(random() * 100) / 100,
      state: kind === "rides" ? { kind, condition: share(condition()) } : { kind },
      asFound,
      presentation: presentation(),
      papers: papers(),
      month: month(),
    };
  };
}

/** What frames were made of, roughly: no carbon before the 1980s, no titanium before the 1990s. Invented shares. */
function materials(era: Era): Deck<PricedAttributes["frameMaterial"]> {
  if (era === "pre-1970" || era === "1970s")
    return [
      ["steel", 4],
      ["aluminium", 1],
    ];
  if (era === "1980s")
    return [
      ["steel", 7],
      ["aluminium", 2],
      ["carbon", 1],
    ];
  return [
    ["steel", 4],
    ["aluminium", 3],
    ["carbon", 2],
    ["titanium", 1],
  ];
}

/**
 * Standard normal noise in pairs z, -z within an era of a cell, so that luck in a handful of sales does not tilt what the era or the kind is
 * worth; a single price scatters as before. Antithetic variates: Hammersley & Morton 1956.
 */
function mirroredNoise(random: RandomNumbers): (era: Era) => number {
  const pending = new Map<Era, number>();
  return (era) => {
    const first = pending.get(era);
    if (first !== undefined) {
      pending.delete(era);
      return -first;
    }
    // Half a step off both ends, so that no draw is infinite.
    const drawn = normalQuantile((Math.floor(random() * 2 ** 32) + 0.5) / 2 ** 32);
    pending.set(era, drawn);
    return drawn;
  };
}

function priced(
  drivers: ValueDrivers,
  description: SaleDescription,
  noise: (era: Era) => number,
): ComparableSale {
  const { ordinary, collectable, collectableKinds } = drivers.spread;
  const scatters = collectableKinds.some((term) =>
    termHolds(term, description.attributes, description.originality),
  );
  const sd = logWidth(scatters ? collectable : ordinary) / (normalQuantile(0.9) - normalQuantile(0.1));
  const log = trueLogMedian(drivers, description) + sd * noise(description.attributes.era);
  return { description, price: rounded(Math.exp(log)) };
}

/** Whole units from 20 up, tenths below, where a whole unit would be a tenth of the price. */
function rounded(price: number): number {
  return price >= 20 ? Math.round(price) : Math.round(price * 10) / 10;
}
