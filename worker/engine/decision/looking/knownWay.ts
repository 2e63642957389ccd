import type { Money, Probability } from "../../quantity.ts";
import { goingOn, type Uncertainty, type Way } from "../../service/uncertainty.ts";
import type { DiscoveryStakes } from "../discovery.ts";

/** What the level of a check brings once it is known. */
export interface KnownWay {
  /** Of its work and what is told to the buyer, minutes at the goal, where the frame survives. */
  readonly cost: Money;
  /** Chance that the work of it ends the frame. */
  readonly ends: Probability;
  /** What was spent on it by then, minutes at the goal. */
  readonly lost: Money;
  /** What the work asks for; others may ask for it too. */
  readonly resources: ReadonlySet<number>;
}

export const NOTHING_COMES: KnownWay = { cost: 0, ends: 0, lost: 0, resources: new Set() };

/**
 * The ways of one level taken together, in proportion to their chances; null where the level itself ends the frame.
 * @param minuteWorth of a minute at speed 1
 */
export function knownWay({ ways }: Uncertainty, rank: number, minuteWorth: Money): KnownWay | null {
  const here = ways.filter((way) => way.rank === rank);
  if (here.length === 0) return NOTHING_COMES;
  const resources = here.find((way) => !way.endsFrame)?.resources;
  if (!resources) return null;
  let through = 0;
  let ending = 0;
  let cost = 0;
  let lost = 0;
  for (const way of here) {
    const chance = chanceOf(way);
    const own = chance * (way.money.mean + way.told + way.minutes.mean * minuteWorth);
    if (way.endsFrame) {
      ending += chance;
      lost += own;
    } else {
      through += chance;
      cost += own;
    }
  }
  return {
    cost: through > 0 ? cost / through : 0,
    ends: ending > 0 ? ending / (ending + through) : 0,
    lost: ending > 0 ? lost / ending : 0,
    resources: new Set(resources),
  };
}

/** Several known ways: work that more than one asks for is paid once. */
export function knownTogether(
  ways: readonly KnownWay[],
  { minuteWorth, resources: all }: DiscoveryStakes,
): KnownWay {
  if (ways.length === 1) return ways[0]!;
  const resources = new Set<number>();
  let cost = 0;
  let lost = 0;
  let ending = 0;
  let survives = 1;
  for (const way of ways) {
    cost += way.cost;
    lost += way.ends * way.lost;
    ending += way.ends;
    survives *= 1 - way.ends;
    for (const index of way.resources) {
      if (resources.has(index)) {
        const { money, minutes } = goingOn(all[index]!);
        cost -= money.mean + minutes.mean * minuteWorth;
      } else resources.add(index);
    }
  }
  return { cost, ends: 1 - survives, lost: ending > 0 ? lost / ending : 0, resources };
}

/** Ways of one level keep their proportions in every class, so that any sum over classes tells them. */
function chanceOf({ chances }: Way): number {
  return chances.reduce((sum, one) => sum + one, 0);
}
