import type { Check } from "../inspection/check.ts";
import type { Finding, Inspection, Position, UnseenCheck } from "../inspection/finding.ts";
import { findingsByCheck } from "../inspection/findingsByCheck.ts";
import type { Probability } from "../quantity.ts";
import type { CuredWork } from "../service/doneWork.ts";
import type { OperationId } from "../service/operation.ts";
import type { Book } from "./book.ts";

/** A finding as it was found, with the finished work that cured it; none where it stands. */
export interface FoundFinding extends Finding {
  readonly curedBy: readonly OperationId[];
}

/** An inspection as finished work leaves it: what it cured stands at the best level, seen or not. */
export function afterWork(
  asFound: Inspection,
  found: readonly FoundFinding[],
  cured: CuredWork,
  book: Book,
): Inspection {
  const checkOf = (id: string) => book.inspection.byId.get(id)!.check;
  const findings = asFound.findings.map((finding, at) =>
    found[at]!.curedBy.length > 0 ? atBest(finding, checkOf(finding.check)) : finding,
  );
  return {
    ...asFound,
    findings,
    byCheck: findingsByCheck(findings),
    unseen: asFound.unseen.map((one) => cleared(one, checkOf(one.check), cured)),
  };
}

function atBest(finding: Finding, { levels }: Check): Finding {
  const { id, severity, safety } = levels[0]!;
  return { ...finding, level: id, rank: 0, severity, safety };
}

/**
 * A check that was not made is cleared where finished work has cured whatever can be cured of it: those chances go to the best level. Levels that end the
 * job, and those that nothing cures, keep theirs.
 */
function cleared(unseen: UnseenCheck, check: Check, { isCurable, wouldBeCured }: CuredWork): UnseenCheck {
  const position: Position = unseen.position ?? (check.perWheel ? "both" : "bike");
  const curable = check.levels
    .map((level, rank) => ({ check, level, rank, position }))
    .filter((fault) => fault.rank > 0 && fault.level.terminal === null && isCurable(fault));
  if (curable.length === 0 || !curable.every(wouldBeCured)) return unseen;
  const ranks = curable.map(({ rank }) => rank);
  return {
    ...unseen,
    probabilities: movedToBest(unseen.probabilities, ranks),
    byClass: inEachClass(unseen.byClass, check.levels.length, (chances) => movedToBest(chances, ranks)),
  };
}

/** Chances of a check's levels, with those of some levels moved to the best one. */
export function movedToBest(
  chances: readonly Probability[],
  cured: readonly number[],
): readonly Probability[] {
  const moved = cured.reduce((sum, rank) => sum + chances[rank]!, 0);
  return chances.map((chance, rank) => (rank === 0 ? chance + moved : cured.includes(rank) ? 0 : chance));
}

function inEachClass(
  byClass: Float64Array,
  levels: number,
  move: (chances: readonly Probability[]) => readonly Probability[],
): Float64Array {
  const moved = new Float64Array(byClass.length);
  for (let from = 0; from < byClass.length; from += levels)
    moved.set(move([...byClass.subarray(from, from + levels)]), from);
  return moved;
}
