import { ERAS, TIERS } from "../bicycle.ts";
import type { Probability } from "../quantity.ts";
import type { ClassedAttributes } from "./bikeClass.ts";
import type { Comparable, KnownAttributes } from "./comparable.ts";
import type { PricedAttributes, SaleState } from "./saleDescription.ts";
import type { MarketShares, ValueDesign, ValueTerm } from "./valueTables.ts";

/** What is known of a comparable's description. */
export type KnownDescription = Pick<
  Comparable,
  "attributes" | "state" | "condition" | "originality" | "desirability" | "month"
>;

export interface Chanced<What> {
  readonly chance: Probability;
  readonly what: What;
}

/** The states a bike may have been sold in: the known one, or the market's mixture. */
export function statesOf(
  { state, condition }: KnownDescription,
  { conditionKnots }: ValueDesign,
  shares: MarketShares,
): readonly Chanced<SaleState>[] {
  if (condition !== undefined) return [{ what: { kind: "rides", condition }, chance: 1 }];
  const riding = conditionKnots.map((knot, index) => ({
    what: { kind: "rides", condition: knot } as const,
    chance: shares.condition[index]!,
  }));
  if (state === "rides") return riding;
  if (state !== undefined) return [{ what: { kind: state }, chance: 1 }];
  return (Object.keys(shares.state) as SaleState["kind"][]).flatMap((kind): readonly Chanced<SaleState>[] =>
    kind === "rides"
      ? riding.map(({ what, chance }) => ({ what, chance: chance * shares.state.rides }))
      : [{ what: { kind }, chance: shares.state[kind] }],
  );
}

/** Every combination of kind, tier, era and material that the description leaves open, with its share of the market. */
export function* coresOf(
  known: KnownAttributes,
  shares: MarketShares,
): Generator<Chanced<ClassedAttributes>> {
  const open = <Level extends string>(told: Level | undefined, all: readonly Level[]) =>
    told === undefined ? all : [told];
  const share = (told: unknown, of: Readonly<Record<string, number>>, level: string) =>
    told === undefined ? of[level]! : 1;
  const categories = open(known.category, Object.keys(shares.category) as PricedAttributes["category"][]);
  for (const category of categories) {
    const ofKind = share(known.category, shares.category, category);
    for (const componentTier of open(known.componentTier, TIERS)) {
      const ofTier = ofKind * share(known.componentTier, shares.componentTier, componentTier);
      for (const era of open(known.era, ERAS)) {
        const ofEra = ofTier * share(known.era, shares.era, era);
        const materials = shares.frameMaterial[era];
        const names = Object.keys(materials) as PricedAttributes["frameMaterial"][];
        for (const frameMaterial of open(known.frameMaterial, names)) {
          const chance = ofEra * share(known.frameMaterial, materials, frameMaterial);
          if (chance > 0) yield { chance, what: { category, componentTier, era, frameMaterial } };
        }
      }
    }
  }
}

/** Chance that a term holds for a bike of the class it belongs to, over what else is not known of the bike. */
export function chanceInClass(
  term: ValueTerm,
  known: KnownDescription,
  { originalityKnots }: ValueDesign,
  shares: MarketShares,
): Probability {
  const among = (list: readonly string[], told: string | undefined, of: Readonly<Record<string, number>>) => {
    if (list.length === 0) return 1;
    if (told !== undefined) return list.includes(told) ? 1 : 0;
    return list.reduce((sum, level) => sum + of[level]!, 0);
  };
  const { drivetrain, stepThrough } = known.attributes;
  return (
    among(term.drivetrains, drivetrain, shares.drivetrain) *
    among(term.stepThrough, stepThrough, shares.stepThrough) *
    originalFrom(term.originalityFrom, known.originality, originalityKnots, shares)
  );
}

function originalFrom(
  least: number,
  told: number | undefined,
  knots: readonly number[],
  { originality }: MarketShares,
): Probability {
  if (told !== undefined) return told >= least ? 1 : 0;
  return knots.reduce((sum, knot, index) => (knot >= least ? sum + originality[index]! : sum), 0);
}
