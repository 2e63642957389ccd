import type { Money } from "../quantity.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import { afterOpening } from "./afterOpening.ts";
import type { Sale } from "./branch.ts";
import { costOf, type Work } from "./courseBranch.ts";
import { partsSale, whenFrameSells } from "./partsSale.ts";
import { receivedShare } from "./pricing.ts";
import type { Situation } from "./situation.ts";

/** What is done instead when a fault turns out to cost too much: the best of selling with the fault told, breaking for parts, recycling. */
export interface Change {
  readonly sale: Sale | null;
  /** Work still to do once the opening work is done. */
  readonly work: Work;
  /** Net benefit from then on. */
  readonly worth: Money;
}

export function changeOfCourse(situation: Omit<Situation, "change">): Change {
  const { pricing, settled, book, parts, frameUnsaleableChance } = situation;
  const told = { price: pricing.asFoundNotRiding, share: receivedShare(settled, book, "asFound") };
  // Another fault than one of the frame: where nothing blocks the frame it is there to sell.
  const broken = partsSale(whenFrameSells(parts.list, frameUnsaleableChance), pricing);
  const ways = [
    ...(situation.wholeSaleClosedBecause === null ? [way("sell-as-found", told, situation)] : []),
    way("break-for-parts", broken, situation),
    way("leave", null, situation),
  ];
  return ways.reduce((best, other) => (other.worth > best.worth ? other : best));
}

function way(
  course: keyof Situation["fixedPlans"],
  sale: Change["sale"],
  situation: Omit<Situation, "change">,
): Change {
  const work = afterOpening(situation.fixedPlans[course]);
  const { fee, packing } = situation.settled;
  const takings = sale ? sale.share * logNormalMean(sale.price) - fee.fixed - packing : 0;
  return { sale, work, worth: takings - costOf(work, situation.settled) };
}
