import type { Check } from "../inspection/check.ts";
import type { Inspection, UnseenCheck } from "../inspection/finding.ts";
import type { Probability } from "../quantity.ts";
import { isPaper } from "../service/allowance.ts";
import type { Bench } from "../service/bench.ts";
import { planFixed } from "../service/fixedPlan.ts";
import { Ledger } from "../service/ledger.ts";
import { type Moments, sum } from "../service/moments.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import type { Book } from "./book.ts";
import { closures } from "./closures.ts";
import { costOf } from "./courseBranch.ts";
import { type PartsOutlook, partsOutlook } from "./partsOutlook.ts";
import { type PartsSale, partsSale } from "./partsSale.ts";
import { type Pricing, pricingOf } from "./pricing.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { concernsFrame, standingFaults } from "./standingFaults.ts";

/** What becomes of a bike whose frame turns out to be finished: broken for parts or recycled, whichever earns more at the goal. */
export interface Salvage {
  readonly sale: PartsSale | null;
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
  /** The parts piece by piece. */
  readonly parts: PartsOutlook;
  readonly salvage: Salvage;
}

export function situationOf(settled: SettledRequest, inspection: Inspection, book: Book): Situation {
  const faults = standingFaults(inspection, settled.rearSprockets, book);
  const pricing = pricingOf(settled, book);
  const frameBlocked = inspection.findings.some(
    ({ check, safety }) => safety === "block" && concernsFrame(book.inspection.byId.get(check)!.check),
  );
  const frameUnsaleableChance = frameBlocked ? 1 : unseenChance(inspection.unseen, book, condemnsFrame);
  const parts = partsOutlook(settled, inspection, book, pricing, frameUnsaleableChance);
  const bench: Bench = {
    index: book.service,
    attributes: settled.attributes,
    rearSprockets: settled.rearSprockets,
    workshop: settled.workshop,
    missingParts: settled.missingParts,
    huntMinutesPerMissingPart: book.catalogue.defaults.huntMinutesPerMissingPart,
    partsSellingMinutes: parts.list.minutes,
    faults,
    found: inspection.byCheck,
  };
  const blocked = inspection.findings.some(({ safety }) => safety === "block");
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
    frameUnsaleableChance,
    parts,
    salvage: salvageOf(fixedPlans, parts, pricing, settled),
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

function salvageOf(
  { "break-for-parts": strip, leave: recycle }: Situation["fixedPlans"],
  parts: PartsOutlook,
  pricing: Pricing,
  settled: SettledRequest,
): Salvage {
  const { withoutFrame } = parts;
  const sale = partsSale(withoutFrame, pricing);
  const stripping = {
    money: strip.money,
    minutes: sum(strip.minutes, { mean: withoutFrame.minutes - parts.list.minutes, variance: 0 }),
  };
  const fixed = sale ? settled.fee.fixed + settled.packing : 0;
  const stripped = withoutFrame.takings - fixed - costOf(stripping, settled);
  return stripped > -costOf(recycle, settled)
    ? { sale, ...stripping }
    : { sale: null, money: recycle.money, minutes: recycle.minutes };
}
