import { type ReadonlySignal, signal } from "@preact/signals";
import { isRecord } from "../answers/parsed.ts";
import type { Budgets, CourseId, Objective } from "../api/types.ts";
import { COURSE_WORDS } from "../words/course.ts";
import type { Shelf } from "./shelf.ts";

export type BudgetName = keyof Budgets;

/** What there is of one budget. The amount stays while there is no limit, to come back to. */
export interface BudgetTerm {
  readonly amount: number;
  readonly limited: boolean;
}

/** What the user sets for the choice of a set: hours, money, places on the floor, what to choose for, and courses held to. */
export interface SetTerms extends Readonly<Record<BudgetName, BudgetTerm>> {
  readonly objective: Objective;
  /** By find: the course it takes in any case. */
  readonly courses: Readonly<Record<string, CourseId>>;
}

/** One free Saturday, what is in the tin, and two bikes in the hall: common practice, no source. */
export const FIRST_TERMS: SetTerms = {
  hours: { amount: 8, limited: true },
  cash: { amount: 150, limited: true },
  slots: { amount: 2, limited: true },
  objective: "netBenefit",
  courses: {},
};

/** What the API takes at most. */
export const MOST: Readonly<Record<BudgetName, number>> = { hours: 10_000, cash: 1_000_000, slots: 10_000 };

export interface KeptTerms {
  readonly terms: ReadonlySignal<SetTerms>;
  put(change: Partial<SetTerms>): void;
}

/** Opens the terms kept in the browser. What cannot be read is as at first. */
export function openSetTerms(place: Shelf): KeptTerms {
  const kept = place.read();
  const terms = signal(termsIn(typeof kept === "object" ? kept.value : undefined));
  return {
    terms,
    put(change) {
      terms.value = { ...terms.value, ...change };
      place.write(terms.value);
    },
  };
}

/** Whether an amount can be that of a budget; places are whole. */
export function isAmount(budget: BudgetName, amount: unknown): amount is number {
  return (
    typeof amount === "number" &&
    amount >= 0 &&
    amount <= MOST[budget] &&
    (budget !== "slots" || Number.isInteger(amount))
  );
}

/** The budgets as the API takes them. */
export function budgetsOf({ hours, cash, slots }: SetTerms): Budgets {
  const given = ({ amount, limited }: BudgetTerm) => (limited ? amount : null);
  return { hours: given(hours), cash: given(cash), slots: given(slots) };
}

function termsIn(value: unknown): SetTerms {
  if (!isRecord(value)) return FIRST_TERMS;
  const term = (budget: BudgetName): BudgetTerm => {
    const kept = value[budget];
    const sound = isRecord(kept) && isAmount(budget, kept.amount) && typeof kept.limited === "boolean";
    return sound ? { amount: kept.amount as number, limited: kept.limited as boolean } : FIRST_TERMS[budget];
  };
  return {
    hours: term("hours"),
    cash: term("cash"),
    slots: term("slots"),
    objective: value.objective === "margin" ? "margin" : "netBenefit",
    courses: coursesIn(value.courses),
  };
}

function coursesIn(value: unknown): Record<string, CourseId> {
  if (!isRecord(value)) return {};
  const known = Object.entries(value).filter(
    (entry): entry is [string, CourseId] =>
      typeof entry[1] === "string" && Object.hasOwn(COURSE_WORDS, entry[1]),
  );
  return Object.fromEntries(known);
}
