import { holds } from "../../bicycle.ts";
import type { CourseId } from "../../service/operation.ts";
import type { UnseenFaults } from "../../service/unseenFaults.ts";
import type { Situation } from "../situation.ts";

const NONE: ReadonlySet<CourseId> = new Set();
const RIDEABLE: ReadonlySet<CourseId> = new Set(["restore", "make-safe"]);
const WHOLE: ReadonlySet<CourseId> = new Set([...RIDEABLE, "sell-as-found"]);

/**
 * The courses that levels close by themselves: a frame that is finished is not sold whole; a bike with a fault that a test can decide is not ridden until
 * it is done.
 */
export function closedAt(
  known: readonly UnseenFaults[],
  ranks: readonly number[],
  situation: Situation,
): ReadonlySet<CourseId> {
  let closed = NONE;
  for (let at = 0; at < ranks.length; at++) {
    const { check } = known[at]!;
    const { terminal, id } = check.levels[ranks[at]!]!;
    if (terminal === "parts-or-recycle" || terminal === "recycle") return WHOLE;
    if (terminal === "decide-first" && isTested(check.id, id, situation)) closed = RIDEABLE;
  }
  return closed;
}

function isTested(check: string, level: string, { settled: { attributes }, book }: Situation): boolean {
  return book.service.testing.some(
    ({ onlyIf, notOnMaterials, tests }) =>
      holds(onlyIf, attributes) &&
      !notOnMaterials.includes(attributes.frameMaterial) &&
      tests.some(({ of, at }) => of === check && at.includes(level)),
  );
}
