import type { Check } from "../inspection/check.ts";
import type { Inspection, UnseenCheck } from "../inspection/finding.ts";
import type { Probability } from "../quantity.ts";
import { isPaper } from "../service/allowance.ts";
import type { Bench } from "../service/bench.ts";
import { planFixed } from "../service/fixedPlan.ts";
import { Ledger } from "../service/ledger.ts";
import type { Moments } from "../service/moments.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import { type LogNormal, logNormalMean } from "../statistics/logNormal.ts";
import type { Book } from "./book.ts";
import { closures } from "./closures.ts";
import { type Pricing, partsShare, pricingOf } from "./pricing.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { concernsFrame, standingFaults } from "./standingFaults.ts";

/** What becomes of a bike whose frame turns out to be finished: broken for parts or recycled, whichever earns more at the goal. */
export interface Salvage {
  readonly price: LogNormal | null;
  readonly share: number;
  readonly money: Moments;
  readonly minutes: Moments;
}

/** One find as the courses see it. */
export interface Situation {
  readonly settled: SettledRequest;
  readonly book: Book;
  readonly inspection: Inspection;
  readonly checks: ReadonlyMap<string, Check>;
  readonly bench: Bench;
  /** Resources that the courses share. */
  readonly ledger: Ledger;
  /** Plans that do not depend on the faults. */
  readonly fixedPlans: Readonly<Record<"sell-as-found" | "break-for-parts" | "leave", WorkPlan>>;
  readonly pricing: Pricing;
  /** Visible condition, 0 to 1 (below 0 where faults add up to more), with nothing done. */
  readonly unworkedCondition: number;
  /** Why nobody may ride it in the end whatever is done; null where that is open. */
  readonly rideableClosedBecause: string | null;
  /** Why it may not be sold whole. */
  readonly wholeSaleClosedBecause: string | null;
  /** Why there is nothing to break. */
  readonly partsClosedBecause: string | null;
  /** Chance that a blocking fault stands, 1 where one was found. */
  readonly notRidingChance: Probability;
  readonly frameUnsaleableChance: Probability;
  /** Share of the parts' worth in pieces that findings spoil. */
  readonly spoiledShare: Probability;
  readonly salvage: Salvage;
}

export function situationOf(settled: SettledRequest, inspection: Inspection, book: Book): Situation {
  const { faults, standing } = standingFaults(inspection, settled.rearSprockets, book);
  const pricing = pricingOf(settled, book);
  const bench: Bench = {
    index: book.service,
    attributes: settled.attributes,
    rearSprockets: settled.rearSprockets,
    workshop: settled.workshop,
    missingParts: settled.missingParts,
    huntMinutesPerMissingPart: book.catalogue.defaults.huntMinutesPerMissingPart,
    faults,
    standing,
  };
  const blocked = inspection.findings.some(({ safety }) => safety === "block");
  const frameBlocked = inspection.findings.some(
    ({ check, safety }) => safety === "block" && concernsFrame(book.inspection.byId.get(check)!.check),
  );
  const spoiledShare = spoiled(standing, book);
  const ledger = new Ledger(bench);
  const fixedPlans = {
    "sell-as-found": planFixed("sell-as-found", ledger),
    "break-for-parts": planFixed("break-for-parts", ledger),
    leave: planFixed("leave", ledger),
  };
  return {
    settled,
    book,
    inspection,
    checks: book.checks,
    bench,
    ledger,
    fixedPlans,
    pricing,
    unworkedCondition: 1 - pricing.notPolished - faults.reduce((total, { penalty }) => total + penalty, 0),
    ...closures(settled, inspection, book),
    notRidingChance:
      blocked || settled.missingParts.length > 0 ? 1 : unseenChance(inspection.unseen, book, blocks),
    frameUnsaleableChance: frameBlocked ? 1 : unseenChance(inspection.unseen, book, condemnsFrame),
    spoiledShare,
    salvage: salvageOf(fixedPlans, pricing, spoiledShare, settled, book),
  };
}

function blocks(check: Check, rank: number): boolean {
  return check.levels[rank]!.safety === "block";
}

function condemnsFrame(check: Check, rank: number): boolean {
  return concernsFrame(check) && blocks(check, rank);
}

/** Chance that some unseen check stands at a level of the kind; papers are owed, not guessed. */
function unseenChance(
  unseen: readonly UnseenCheck[],
  book: Book,
  kind: (check: Check, rank: number) => boolean,
): Probability {
  let none = 1;
  for (const { check: id, probabilities } of unseen) {
    const { check } = book.inspection.byId.get(id)!;
    if (isPaper(check)) continue;
    let chance = 0;
    probabilities.forEach((probability, rank) => {
      if (kind(check, rank)) chance += probability;
    });
    none *= 1 - chance;
  }
  return 1 - none;
}

/** Shares of different pieces add; nothing spoils more than all. */
function spoiled(standing: ReadonlySet<string>, book: Book): Probability {
  const rows = book.catalogue.value.parts.spoiled.filter(({ check, levels }) =>
    levels.some((level) => standing.has(`${check}:${level}`)),
  );
  return Math.min(
    1,
    rows.reduce((total, { share }) => total + share, 0),
  );
}

function salvageOf(
  { "break-for-parts": strip, leave: recycle }: Situation["fixedPlans"],
  pricing: Pricing,
  spoiledShare: Probability,
  settled: SettledRequest,
  book: Book,
): Salvage {
  const price = pricing.parts(true, spoiledShare);
  const share = partsShare(settled, book);
  const { hourlyGoal, speedFactor } = settled.workshop;
  const worth = (money: number, minutes: number) => -money - (minutes * speedFactor * hourlyGoal) / 60;
  const fixed = settled.fee.fixed + settled.packing;
  const stripped = share * logNormalMean(price) - fixed + worth(strip.money.mean, strip.minutes.mean);
  const recycled = worth(recycle.money.mean, recycle.minutes.mean);
  return stripped > recycled
    ? { price, share, money: strip.money, minutes: strip.minutes }
    : { price: null, share: 0, money: recycle.money, minutes: recycle.minutes };
}
