import type { Inspection } from "../inspection/finding.ts";
import type { Probability } from "../quantity.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import type { GoingRate } from "../valuation/goingRate.ts";
import {
  grossOfListed,
  listParts,
  type PartsList,
  type PartsTerms,
  type PieceThere,
} from "../valuation/partsList.ts";
import { FRAME, soundPieces } from "../valuation/soundPieces.ts";
import type { Book } from "./book.ts";
import { aroundMean } from "./partsSale.ts";
import { piecesThere } from "./piecesThere.ts";
import { type Pricing, partsNetShare } from "./pricing.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { isWhole } from "./standingFaults.ts";

/** The parts of one find, piece by piece. */
export interface PartsOutlook {
  /** What to list as the bike is known now. Empty for a bare frame: nothing is left to take off it. */
  readonly list: PartsList;
  /** What to list once the frame is known to be lost. */
  readonly withoutFrame: PartsList;
  /** What the pieces sold in common practice fetch together if each sells, whatever the user's hour is worth. */
  readonly goingRate: (frameSells: boolean) => GoingRate;
}

/** Which pieces pay at the user's goal, with the chances of what was not looked at. */
export function partsOutlook(
  settled: SettledRequest,
  inspection: Inspection,
  book: Book,
  pricing: Pricing,
  frameLostChance: Probability,
): PartsOutlook {
  const table = book.catalogue.value.parts;
  const { hourlyGoal, speedFactor } = settled.workshop;
  const whole = isWhole(settled.attributes);
  const total = logNormalMean(pricing.parts);
  const sound = whole ? soundPieces(table, settled.attributes, total) : [];
  const there = piecesThere(sound, settled, inspection, book);
  const terms: PartsTerms = {
    netShare: partsNetShare(settled, book),
    minuteWorth: (speedFactor * hourlyGoal) / 60,
    most: table.pieces.most,
    fixedCost: settled.fee.fixed + settled.packing,
  };
  const list = listParts(withFrame(there, frameLostChance), terms);
  return {
    list,
    withoutFrame: frameLostChance === 1 ? list : listParts(withFrame(there, 1), terms),
    goingRate: (frameSells) => {
      if (!whole) return pricing.parts;
      const usual = { ...terms, minuteWorth: 0, fixedCost: 0 };
      const gross = grossOfListed(withFrame(there, frameSells ? 0 : 1), usual);
      return aroundMean(Math.max(table.leastShare * total, gross), pricing.parts);
    },
  };
}

/** The pieces with the chance that the frame may not be sold; barred where that is certain. */
function withFrame(pieces: readonly PieceThere[], lostChance: Probability): readonly PieceThere[] {
  return pieces.map((piece): PieceThere => {
    if (piece.id !== FRAME) return piece;
    const chanceUsable = piece.chanceUsable * (1 - lostChance);
    return { ...piece, chanceUsable, barred: lostChance === 1 ? "frame-blocked" : piece.barred };
  });
}
