import type { UnseenCheck } from "../../inspection/finding.ts";
import { dismantlingFor } from "../../service/dismantling.ts";
import type { Book } from "../book.ts";
import type { OpenFind } from "../weighFind.ts";
import { paperOutlook } from "./findOutlook.ts";
import { answerOf, type LevelOutlook } from "./levelOutlook.ts";
import type { Looking } from "./looking.ts";
import { type LookCost, lookValue } from "./lookValue.ts";
import type { UnmadeCheck } from "./nextCheck.ts";
import { sampleInformation } from "./sampleInformation.ts";
import { weighedAgain } from "./weighedAgain.ts";

/** A level less likely than this is left out: it moves nothing that is shown. */
const UNLIKELY = 1e-6;
/**
 * How much the engine is asked anew, in levels times what a bike has unseen (and a little for what any bike takes): an answer may take a few times as long as
 * without the advice, never tens of times.
 */
const MOST_ASKED = 300;
const ANY_BIKE = 5;

/**
 * Each check not made with what it is worth, first by class sums; then those that lead are weighed anew, the best first, until the best of all is exact
 * or as much was asked as one answer may.
 */
export function unmadeChecks({ find, now, begun, outlookOf }: Looking, book: Book): readonly UnmadeCheck[] {
  const { inspection, situation } = find;
  const value = (unseen: UnseenCheck, outlooks: readonly LevelOutlook[], method: UnmadeCheck["method"]) => ({
    check: unseen.check,
    ...lookValue(
      costOf(unseen, find, book),
      sampleInformation(outlooks.map((one) => answerOf(one, begun))),
      outlooks,
      now.course,
      method,
      situation,
    ),
  });
  const open = inspection.unseen.filter((one) => one.acquittedBy === null || isOwed(one, book));
  const valued = open.map((unseen) => {
    const ranks = possibleRanks(unseen);
    const outlook = outlookOf([unseen.check]);
    const one = value(
      unseen,
      ranks.map((rank) => outlook?.([rank], unseen.probabilities[rank]!) ?? paperOutlook(find, unseen, rank)),
      ranks.length > 1 ? "estimated" : "exact",
    );
    return { unseen, ranks, one };
  });
  let left = MOST_ASKED;
  for (;;) {
    const best = valued.reduce(
      (top, other) => (other.one.netGain > top.one.netGain ? other : top),
      valued[0]!,
    );
    if (!best || best.one.method === "exact" || best.one.netGain <= 0) break;
    left -= best.ranks.length * (open.length + ANY_BIKE);
    if (left < 0) break;
    best.one = value(
      best.unseen,
      best.ranks.map((rank) =>
        weighedAgain(find, [best.unseen], [rank], best.unseen.probabilities[rank]!, book),
      ),
      "exact",
    );
  }
  return valued.map(({ one }) => one);
}

function possibleRanks({ probabilities }: UnseenCheck): readonly number[] {
  return [...probabilities.keys()].filter((rank) => probabilities[rank]! >= UNLIKELY);
}

function isOwed({ check }: UnseenCheck, book: Book): boolean {
  return book.inspection.byId.get(check)!.check.ifNotChecked === "block";
}

function costOf(unseen: UnseenCheck, { settled, situation }: OpenFind, book: Book): LookCost {
  const { check } = book.inspection.byId.get(unseen.check)!;
  return {
    position: unseen.position ?? null,
    owed: isOwed(unseen, book),
    fee: 0,
    where: check.where,
    minutes: (check.minutes + dismantlingFor(check, situation.bench)) * settled.workshop.speedFactor,
  };
}
