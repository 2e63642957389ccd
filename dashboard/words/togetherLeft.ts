import type { FieldFault } from "../api/fault.ts";
import type { Check, CourseId, Objective } from "../api/types.ts";
import { capital } from "./count.ts";
import { COURSE_WORDS } from "./course.ts";
import { goalMoney } from "./money.ts";
import { refusal } from "./refusal.ts";
import { needsWords } from "./together.ts";

type Needs = Parameters<typeof needsWords>[0];

/** What decides why a find is left. */
export interface LeftTold {
  readonly shown: { readonly course: CourseId; readonly margin: { readonly mean: number } };
  readonly pays: boolean;
  readonly needs: Needs | null;
  readonly held: CourseId | null;
}

/** Why a find is not in the set: "No room: it needs 7 h and €245 more." Null where no set fits. */
export function whyLeft(told: LeftTold, objective: Objective, goal: number, currency: string): string | null {
  const { shown, pays, needs, held } = told;
  const doing = COURSE_WORDS[shown.course].doing;
  if (held !== null) return null;
  if (!pays) {
    if (shown.margin.mean < 0) return `Does not pay: ${doing}, the best of its courses, loses money.`;
    return objective === "margin"
      ? "Leaving it costs no more than working on it."
      : `Does not pay your ${goalMoney(goal, currency)} an hour.`;
  }
  if (needs === null) return null;
  const lacking = needsWords(needs, currency);
  return lacking === null ? "Would fit as well." : `Would pay, no room: needs ${lacking} more.`;
}

/** A refused field of the whole question, with the find that it is about before it: "Plum hybrid: Chain elongation. ..." */
export function setRefusal(
  { pointer, message }: FieldFault,
  nameAt: (place: number) => string | undefined,
  checks: readonly Check[],
): string {
  const [, place, rest = ""] = /^\/finds\/(\d+)(.*)/.exec(pointer) ?? [];
  const name = nameAt(Number(place));
  return name === undefined
    ? refusal({ pointer, message }, checks)
    : `${name}: ${refusal({ pointer: rest, message }, checks)}`;
}

/** What is wrong with a find, in the words of its own page; a course held to that is closed, by what to do here. */
export function problemWords(
  faults: readonly FieldFault[],
  held: CourseId | null,
  checks: readonly Check[],
): string {
  if (held !== null && faults.some(({ pointer }) => pointer === "/course"))
    return `${capital(COURSE_WORDS[held].doing)} is closed to this bike. Let it choose; its own page says why.`;
  return `Not worked out. ${faults.map((fault) => refusal(fault, checks)).join(" ")}`;
}
