import type { Check } from "../inspection/check.ts";
import type { Inspection } from "../inspection/finding.ts";
import type { Money, Probability } from "../quantity.ts";
import type { Bench } from "../service/bench.ts";
import { planFixed } from "../service/fixedPlan.ts";
import { Ledger } from "../service/ledger.ts";
import { type Moments, sum } from "../service/moments.ts";
import { isPaper, type UnseenFaults, unseenFaults } from "../service/unseenFaults.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import { logNormalMean } from "../statistics/logNormal.ts";
import { afterOpening } from "./afterOpening.ts";
import type { Book } from "./book.ts";
import type { Sale } from "./branch.ts";
import { type Change, changeOfCourse } from "./changeOfCourse.ts";
import { closures } from "./closures.ts";
import { costOf } from "./courseBranch.ts";
import { type PartsOutlook, partsOutlook } from "./partsOutlook.ts";
import { listedPieces, partsSale } from "./partsSale.ts";
import { type Pricing, pricingOf, receivedShare } from "./pricing.ts";
import { type Draw, drawScenarios } from "./scenarioDraws.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { concernsFrame, standingFaults } from "./standingFaults.ts";

/**
 * What becomes of a bike whose frame turns out to be finished once the opening work is done: broken for parts or recycled, whichever earns more at the
 * goal.
 */
export interface Salvage {
  readonly sale: Sale | null;
  /** Net benefit of it. */
  readonly worth: Money;
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
  /** What was not looked at, in the classes of history that are likely at all. */
  readonly unseen: { readonly faults: readonly UnseenFaults[]; readonly weights: Float64Array };
  /** What was not looked at, drawn in the scenarios; drawn once, when first asked for. */
  readonly draws: () => readonly Draw[];
  /** The parts piece by piece. */
  readonly parts: PartsOutlook;
  readonly salvage: Salvage;
  /** What is done instead where a course is changed. */
  readonly change: Change;
}

export function situationOf(settled: SettledRequest, inspection: Inspection, book: Book): Situation {
  const faults = standingFaults(inspection, settled.rearSprockets, book);
  const pricing = pricingOf(settled, book);
  const frameBlocked = inspection.findings.some(
    ({ check, safety }) => safety === "block" && concernsFrame(book.inspection.byId.get(check)!.check),
  );
  const frameUnsaleableChance = frameBlocked ? 1 : unseenChance(inspection, book, condemnsFrame);
  const parts = partsOutlook(settled, inspection, book, pricing, frameUnsaleableChance);
  const bench: Bench = {
    index: book.service,
    attributes: settled.attributes,
    rearSprockets: settled.rearSprockets,
    workshop: settled.workshop,
    missingParts: settled.missingParts,
    huntMinutesPerMissingPart: book.catalogue.defaults.huntMinutesPerMissingPart,
    frameAtStake: frameAtStake(settled, book, pricing, parts),
    stopRule: book.catalogue.defaults.stopRule,
    done: settled.done,
    stock: settled.stock,
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
  const unseen = unseenIn(inspection, book);
  let draws: readonly Draw[] | undefined;
  const known: Omit<Situation, "change"> = {
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
    notRidingChance: blocked || settled.missingParts.length > 0 ? 1 : unseenChance(inspection, book, blocks),
    frameUnsaleableChance,
    unseen,
    draws: () => {
      draws ??= drawScenarios(unseen);
      return draws;
    },
    parts,
    salvage: salvageOf(fixedPlans, parts, pricing, settled),
  };
  return { ...known, change: changeOfCourse(known) };
}

/** Classes of history less likely than this are left out: all of them together change no figure that is shown. */
const UNLIKELY: Probability = 1e-7;

function unseenIn({ unseen, history }: Inspection, book: Book): Situation["unseen"] {
  const classes = [...history.weights.keys()].filter((one) => history.weights[one]! >= UNLIKELY);
  const kept = classes.reduce((sum, one) => sum + history.weights[one]!, 0);
  return {
    faults: unseenFaults(unseen, book.checks, classes),
    weights: Float64Array.from(classes, (one) => history.weights[one]! / kept),
  };
}

/** Takings of the bike with every standing fault cured, less what its parts bring without the frame; at least 0. */
function frameAtStake(
  settled: SettledRequest,
  book: Book,
  { rideable, notPolished }: Pricing,
  { withoutFrame: { takings, minutes } }: PartsOutlook,
): Money {
  const { hourlyGoal, speedFactor } = settled.workshop;
  const whole = rideable(1 - notPolished, { polished: false, repainted: false });
  const received = receivedShare(settled, book, "rideable") * logNormalMean(whole);
  return Math.max(0, received - (takings - (minutes * speedFactor * hourlyGoal) / 60));
}

export function blocks(check: Check, rank: number): boolean {
  return check.levels[rank]!.safety === "block";
}

export function condemnsFrame(check: Check, rank: number): boolean {
  return concernsFrame(check) && blocks(check, rank);
}

/**
 * Chance that some unseen check stands at a level of the kind, summed over the classes of history, in each of which checks are independent. Papers are
 * owed, not guessed.
 */
function unseenChance(
  { unseen, history: { weights } }: Inspection,
  book: Book,
  kind: (check: Check, rank: number) => boolean,
): Probability {
  const none = weights.slice();
  for (const { check: id, byClass } of unseen) {
    const { check } = book.inspection.byId.get(id)!;
    if (isPaper(check)) continue;
    const ranks = check.levels.flatMap((_, rank) => (kind(check, rank) ? [rank] : []));
    if (ranks.length === 0) continue;
    for (let z = 0; z < none.length; z++)
      none[z]! *= 1 - ranks.reduce((sum, rank) => sum + byClass[z * check.levels.length + rank]!, 0);
  }
  return Math.max(0, 1 - none.reduce((sum, one) => sum + one, 0));
}

function salvageOf(
  { "break-for-parts": strip, leave: recycle }: Situation["fixedPlans"],
  parts: PartsOutlook,
  pricing: Pricing,
  settled: SettledRequest,
): Salvage {
  const { withoutFrame } = parts;
  const sale = partsSale(listedPieces(withoutFrame), pricing);
  const left = afterOpening(strip);
  const stripping = {
    money: left.money,
    minutes: sum(left.minutes, { mean: withoutFrame.minutes - parts.list.minutes, variance: 0 }),
  };
  const fixed = sale ? settled.fee.fixed + settled.packing : 0;
  const stripped = withoutFrame.takings - fixed - costOf(stripping, settled);
  const recycled = -costOf(recycle, settled);
  return stripped > recycled
    ? { sale, ...stripping, worth: stripped }
    : { sale: null, money: recycle.money, minutes: recycle.minutes, worth: recycled };
}
