import type { Money, Probability } from "../quantity.ts";
import { log } from "../statistics/elementary/log.ts";
import { squared } from "../statistics/elementary/powers.ts";
import type { LogNormal } from "../statistics/logNormal.ts";
import type { PartsList } from "../valuation/partsList.ts";
import { FRAME } from "../valuation/soundPieces.ts";
import type { Sale } from "./branch.ts";
import { lotsOf } from "./lots.ts";
import type { Pricing } from "./pricing.ts";

/** A piece on offer: what it fetches, its chances, and what reaches the user where it sells. */
interface Offered {
  readonly price: Money;
  readonly chanceUsable: Probability;
  readonly chanceSold: Probability;
  readonly net: Money;
}

/** The pieces listed, the frame's chance as the list has it. */
export function listedPieces({ pieces }: PartsList): readonly Offered[] {
  return pieces.filter(({ listed }) => listed).map(offered);
}

/** The pieces listed where the frame turns out fit to sell. */
export function whenFrameSells({ pieces }: PartsList, lostChance: Probability): readonly Offered[] {
  return pieces
    .filter(({ listed }) => listed)
    .map((piece) => {
      const one = offered(piece);
      // Listed, so its chance is above 0 and the frame not known to be lost.
      return piece.piece === FRAME ? { ...one, chanceUsable: one.chanceUsable / (1 - lostChance) } : one;
    });
}

/** The pieces listed where the frame turns out to be lost. */
export function whenFrameLost({ pieces }: PartsList): readonly Offered[] {
  return pieces.filter(({ listed, piece }) => listed && piece !== FRAME).map(offered);
}

function offered({ price, chanceUsable, chanceSold, expected }: PartsList["pieces"][number]): Offered {
  const chance = chanceUsable * chanceSold;
  return { price, chanceUsable, chanceSold, net: chance > 0 ? expected / chance : 0 };
}

/**
 * The sale of listed pieces: log-normal about their gross, with the spread of the bike's own going rate, in lots of which are fit and sell,
 * each on its own; null where nothing is listed.
 */
export function partsSale(pieces: readonly Offered[], { parts }: Pricing): Sale | null {
  let gross = 0;
  let takings = 0;
  for (const { price, chanceUsable, chanceSold, net } of pieces) {
    const chance = chanceUsable * chanceSold;
    gross += price * chanceUsable;
    takings += net * chance;
  }
  if (takings <= 0 || gross <= 0) return null;
  const chanced = pieces.map(({ net, chanceUsable, chanceSold }) => ({
    net,
    chance: chanceUsable * chanceSold,
  }));
  const lots = lotsOf(chanced, parts.logSd);
  return { price: aroundMean(gross, parts), share: takings / gross, lots };
}

/** Log-normal with the mean given and the spread of another. */
export function aroundMean<Price extends LogNormal>(mean: Money, like: Price): Price {
  return { ...like, logMedian: log(mean) - squared(like.logSd) / 2 };
}
