import { computed, effect } from "@preact/signals";
import { compareFinds } from "../api/client.ts";
import type { ComparisonAnswer, ComparisonBody, CourseId } from "../api/types.ts";
import { setBody } from "../together/setBody.ts";
import { createAsking } from "./asking.ts";
import { finds } from "./finds.ts";
import { goal } from "./goal.ts";
import { budgetsOf, openSetTerms } from "./setTerms.ts";
import { browserStore, shelf } from "./shelf.ts";

/** Hours, money, places, aim and held courses, kept in this browser. */
export const setTerms = openSetTerms(shelf(browserStore(), "spokeworth.set"));

/** The question which finds to take together; null until there is something to ask. */
export const setQuestion = computed(() => {
  const hourlyGoal = goal.value;
  const terms = setTerms.terms.value;
  if (hourlyGoal === null || finds.value.length === 0) return null;
  return setBody(finds.value, { ...terms, hourlyGoal, budgets: budgetsOf(terms) });
});

/** The conversation about the set. */
export const setAsking = createAsking<ComparisonBody, ComparisonAnswer>(compareFinds);

/** Keeps the answer up to date with finds, goal and terms while the page is open. Returns how to stop. */
export function keepAskingForSet(): () => void {
  const stop = effect(() => {
    const question = setQuestion.value;
    if (question !== null) setAsking.ask(question.body, setAsking.answer.peek() === null ? 0 : undefined);
  });
  const online = () => {
    if (setAsking.fault.peek()?.kind === "no-signal") setAsking.again();
  };
  addEventListener("online", online);
  return () => {
    stop();
    removeEventListener("online", online);
  };
}

/** Holds a find to a course, or lets it choose. */
export function holdTo(find: string, course: CourseId | null): void {
  const { [find]: _, ...others } = setTerms.terms.peek().courses;
  setTerms.put({ courses: course === null ? others : { ...others, [find]: course } });
}
