import { useRef } from "preact/hooks";
import { askingOf, finds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { termsOf } from "../state/terms.ts";
import type { Answered } from "./answered.ts";

/** The answers that stand, and the goal they are all held against. */
export interface StandingAnswers {
  readonly answers: readonly Answered[];
  readonly goal: number | null;
}

/**
 * The last time that every find was answered or refused, none was asked about anew, and all answers held for one goal.
 * Until that is so again it stays, so that the list does not jump and no answer for the old goal is held against the
 * new one.
 */
export function useStanding(): StandingAnswers {
  const stood = useRef<StandingAnswers>({ answers: [], goal: null });
  const wished = goal.value;
  const answers = finds.value.map((find) => ({ find, appraisal: askingOf(find.id).answer.value }));
  if (wished === null || answers.length === 0) return stood.current;
  const goals = new Set<number>();
  let open = false;
  for (const { find, appraisal } of answers) {
    const asking = askingOf(find.id);
    const refused = asking.fault.value?.kind === "refused";
    if (asking.status.value !== "settled") open = true;
    else if (appraisal === null) open ||= asking.fault.value === null;
    else if (!refused) goals.add(termsOf(asking, wished).goal);
  }
  if (!open && goals.size <= 1) stood.current = { answers, goal: [...goals][0] ?? wished };
  return stood.current;
}

/** Whether a newer answer is under way for any find. */
export function isAsking(): boolean {
  return finds.value.some(({ id }) => askingOf(id).status.value !== "settled");
}
