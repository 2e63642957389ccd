import type { UnseenCheck } from "../../inspection/finding.ts";
import { isPerWheel, type Observation, type Reading } from "../../inspection/observation.ts";
import type { Book } from "../book.ts";
import { type LookedOver, lookOver } from "../lookOver.ts";

/**
 * The find looked over anew with one more check answered: the hidden history moved by it, every other unseen check's chances too, what it acquits or explains,
 * what finished work has cured of it.
 * @param rank of the level that the check comes to
 */
export function levelEntered(find: LookedOver, unseen: UnseenCheck, rank: number, book: Book): LookedOver {
  const { asTold } = find;
  const { request } = asTold;
  const before = request.observations[unseen.check];
  const observation = observed(unseen, rank, before, book);
  const observations = { ...request.observations, [unseen.check]: observation };
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
