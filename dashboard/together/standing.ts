import { computed } from "@preact/signals";
import type { ComparisonAnswer } from "../api/types.ts";
import { finds } from "../state/finds.ts";
import { setAsking } from "../state/set.ts";
import { type SetRows, setRows } from "./setRows.ts";

/** The last answer with the goal it was asked for: what is shown, whatever was typed since. */
export interface Standing extends SetRows {
  readonly answer: ComparisonAnswer;
  readonly goal: number;
}

/** Null until the first answer. */
export const standing = computed<Standing | null>(() => {
  const answer = setAsking.answer.value;
  const asked = setAsking.answered.value;
  if (answer === null || asked === null) return null;
  return { answer, goal: asked.workshop?.hourlyGoal ?? 0, ...setRows(answer, asked, finds.value) };
});
