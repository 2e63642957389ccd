import type { Money, Probability } from "../quantity.ts";
import type { LogNormal } from "../statistics/logNormal.ts";
import type { PartsList } from "../valuation/partsList.ts";
import { FRAME } from "../valuation/soundPieces.ts";
import type { Pricing } from "./pricing.ts";

/** What listed pieces fetch together, and the share of it that reaches the user. */
export interface PartsSale {
  readonly price: LogNormal;
  readonly share: Probability;
}

type Fetched = Pick<PartsList, "gross" | "takings">;

/** The sums of a list where the frame turns out fit to sell. */
export function whenFrameSells(list: PartsList, lostChance: Probability): Fetched {
  return list.pieces.reduce((sums, piece) => {
    if (piece.piece !== FRAME || !piece.listed) return sums;
    // Listed, so its chance is above 0 and the frame not known to be lost.
    const more = 1 / (1 - lostChance) - 1;
    return {
      gross: sums.gross + more * piece.price * piece.chanceUsable,
      takings: sums.takings + more * piece.expected,
    };
  }, list as Fetched);
}

/** The sums of a list where the frame turns out to be lost. */
export function whenFrameLost(list: PartsList): Fetched {
  return list.pieces.reduce(
    (sums, piece) =>
      piece.piece === FRAME && piece.listed
        ? {
            gross: sums.gross - piece.price * piece.chanceUsable,
            takings: sums.takings - piece.expected,
          }
        : sums,
    list as Fetched,
  );
}

/** The sale of a list's pieces: log-normal about their gross, with the spread of the bike's own going rate; null where nothing is listed. */
export function partsSale({ gross, takings }: Fetched, { parts }: Pricing): PartsSale | null {
  // Sums that differ from nought by rounding alone are a list of nothing.
  if (takings <= NEAR_NOUGHT || gross <= NEAR_NOUGHT) return null;
  return { price: aroundMean(gross, parts), share: takings / gross };
}

const NEAR_NOUGHT: Money = 1e-9;

/** Log-normal with the mean given and the spread of another. */
export function aroundMean<Price extends LogNormal>(mean: Money, like: Price): Price {
  return { ...like, logMedian: Math.log(mean) - like.logSd ** 2 / 2 };
}
