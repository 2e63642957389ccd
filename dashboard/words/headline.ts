import { outOf } from "./chance.ts";
import { capital, count, listed } from "./count.ts";
import { goalMoney } from "./money.ts";

/** What the headline needs of a find that has figures. */
export interface Headed {
  /** Inside a sentence: "the plum hybrid". */
  readonly called: string;
  /** Decided to be worth doing, and its rate above the goal. */
  readonly beats: boolean;
  /** Chance of missing the goal on the course shown. */
  readonly misses: number;
}

/** A chance of missing the goal up to which a find beats it "in nearly every outcome". */
const NEARLY = 0.1;

/** The first page's heading: "Four of seven earn more than your €12 an hour. Only the plum hybrid does so in nearly every outcome." */
export function headline(finds: readonly Headed[], goal: number, currency: string): string {
  const wish = `your ${goalMoney(goal, currency)} an hour`;
  const beating = finds.filter(({ beats }) => beats);
  const [first] = finds;
  if (first === undefined) return `No find here yet to hold against ${wish}.`;
  if (finds.length === 1) {
    if (beating.length === 0) return `${capital(first.called)} does not earn ${wish}.`;
    return `${capital(first.called)} earns more than ${wish}. ${howSurely(beating)}`;
  }
  if (beating.length === 0) return `None of ${count(finds.length)} earns more than ${wish}.`;
  const all = beating.length === finds.length;
  const who = all
    ? `All ${count(finds.length)}`
    : `${capital(count(beating.length))} of ${count(finds.length)}`;
  const earn = beating.length === 1 ? "earns" : "earn";
  return `${who} ${earn} more than ${wish}. ${howSurely(beating)}`;
}

function howSurely(beating: readonly Headed[]): string {
  const nearly = beating.filter(({ misses }) => misses <= NEARLY);
  const [one] = beating;
  if (beating.length === 1 && one !== undefined) {
    if (nearly.length === 1) return "It does so in nearly every outcome.";
    return `It misses ${outOf(one.misses, 10)} outcomes.`;
  }
  if (nearly.length === 0) return "None does so in nearly every outcome.";
  if (nearly.length === beating.length) return "All of them do so in nearly every outcome.";
  if (nearly.length === 1) return `Only ${nearly[0]?.called} does so in nearly every outcome.`;
  const who =
    nearly.length === 2 ? listed(nearly.map(({ called }) => called)) : `${count(nearly.length)} of them`;
  return `${capital(who)} do so in nearly every outcome.`;
}
