import type { Attributes } from "../bicycle.ts";
import type { Check, Safety } from "../inspection/check.ts";
import type { Finding, Inspection, Position, UnseenCheck } from "../inspection/finding.ts";
import type { Probability } from "../quantity.ts";
import { type Fault, needOf } from "../service/fault.ts";
import { isPaper } from "../service/unseenFaults.ts";
import type { Book } from "./book.ts";

/**
 * What a plan has to deal with: faults found, and unseen ones that are likelier than not. A check that was not looked at stands at its worst level k with P(level >= k) above the table's share (its
 * median level); unordered checks at a level that alone is likelier than that. Papers are owed, never assumed.
 */
export function standingFaults(
  inspection: Inspection,
  rearSprockets: number | undefined,
  book: Book,
): readonly Fault[] {
  const share = book.catalogue.defaults.assumedAbove;
  const found = inspection.findings
    .filter(({ rank }) => rank > 0)
    .map((finding) => foundFault(finding, rearSprockets, book));
  const assumed = inspection.unseen.flatMap(
    (unseen) => assumedFault(unseen, share, rearSprockets, book) ?? [],
  );
  return [...found, ...assumed];
}

function foundFault(finding: Finding, rearSprockets: number | undefined, book: Book): Fault {
  const { position, rank, safety } = finding;
  const { check } = book.inspection.byId.get(finding.check)!;
  const oneWheel = position === "front" || position === "rear";
  return faultAt(check, rank, position, safety, oneWheel, false, rearSprockets);
}

function assumedFault(
  unseen: UnseenCheck,
  share: Probability,
  rearSprockets: number | undefined,
  book: Book,
): Fault | null {
  const { check } = book.inspection.byId.get(unseen.check)!;
  if (unseen.acquittedBy !== null || isPaper(check)) return null;
  const rank = check.ordered
    ? medianRank(unseen.probabilities, share)
    : unseen.probabilities.findIndex((chance) => chance > share);
  if (rank <= 0) return null;
  const position = unseen.position ?? (check.perWheel ? "both" : "bike");
  const { safety } = check.levels[rank]!;
  return faultAt(check, rank, position, safety, unseen.position !== undefined, true, rearSprockets);
}

/** The fault of a level, with half its penalty where one wheel alone has it. */
function faultAt(
  check: Check,
  rank: number,
  position: Position,
  safety: Safety,
  oneWheel: boolean,
  assumed: boolean,
  rearSprockets: number | undefined,
): Fault {
  const level = check.levels[rank]!;
  const { need, mayDisclose } = needOf(check, rank, safety, rearSprockets);
  const penalty = level.conditionPenalty * (oneWheel ? 0.5 : 1);
  return { check, position, level, rank, safety, need, mayDisclose, penalty, assumed };
}

/** Worst rank k with P(level >= k) above the share. */
function medianRank(probabilities: readonly Probability[], share: Probability): number {
  let tail = 0;
  for (let rank = probabilities.length - 1; rank > 0; rank--) {
    tail += probabilities[rank]!;
    if (tail > share) return rank;
  }
  return 0;
}

/** Whether a check's answer speaks about frame or fork, which decide if the frame can be sold. */
export function concernsFrame(check: Check): boolean {
  return check.group === "frame-fork";
}

/** A bike that is more than a frame: only such a one can be made rideable here. */
export function isWhole({ completeness }: Attributes): boolean {
  return completeness !== "frame-and-fork" && completeness !== "frame-only";
}
