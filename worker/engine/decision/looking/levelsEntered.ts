import type { UnseenCheck } from "../../inspection/finding.ts";
import { isPerWheel, type Observation, type Reading } from "../../inspection/observation.ts";
import type { Book } from "../book.ts";
import { type LookedOver, lookOver } from "../lookOver.ts";

/**
 * The find looked over anew with more checks answered: the hidden history moved by them, every other unseen check's chances too, what they acquit or explain,
 * what finished work has cured of them.
 * @param ranks of the levels that the checks come to
 */
export function levelsEntered(
  { asTold }: LookedOver,
  checks: readonly UnseenCheck[],
  ranks: readonly number[],
  book: Book,
): LookedOver {
  const { request } = asTold;
  const answered = checks.map((unseen, at) => {
    const before = request.observations[unseen.check];
    return [unseen.check, observed(unseen, ranks[at]!, before, book)] as const;
  });
  const observations = { ...request.observations, ...Object.fromEntries(answered) };
  return lookOver({ ...asTold, request: { ...request, observations } }, book);
}

/** The chances of a check of both wheels are those of the worse one, so that one wheel has the fault: the rear one, as planning has it. */
function observed(
  { check: id, position }: UnseenCheck,
  rank: number,
  before: Observation | undefined,
  book: Book,
): Observation {
  const { perWheel, levels } = book.inspection.byId.get(id)!.check;
  const reading: Reading = { level: levels[rank]!.id };
  if (position) return { ...(before && isPerWheel(before) ? before : {}), [position]: reading };
  return perWheel && rank > 0 ? { front: { level: levels[0]!.id }, rear: reading } : reading;
}
