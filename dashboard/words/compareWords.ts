import type { Appraisal, Reference } from "../api/types.ts";
import { outOf } from "./chance.ts";
import { capital, listed, uncapital } from "./count.ts";
import { money } from "./money.ts";
import { levelWords } from "./plain.ts";
import { readyCounts } from "./ready.ts";
import { minutes } from "./time.ts";

/** A figure in bold with what stands beside it. */
export interface Said {
  readonly strong: string;
  readonly rest: string;
}

/** So many names before the rest is counted. */
const NAMED = 3;

/** What is asked, and the most to pay: "Pay at most €105", "they ask €35". */
export function priceSaid(
  price: number | undefined,
  paid: boolean,
  most: number | null,
  currency: string,
): Said {
  if (paid)
    return { strong: "Already paid", rest: price === undefined ? "" : bought("paid", price, currency) };
  const rest = price === undefined ? "no price known" : bought("they ask", price, currency);
  if (most === null) return { strong: capital(rest), rest: "" };
  return { strong: most > 0 ? `Pay at most ${money(most, currency)}` : "Not even for nothing", rest };
}

function bought(verb: string, price: number, currency: string): string {
  if (price === 0) return verb === "paid" ? "was given" : "given away";
  return `${verb} ${money(price, currency)}`;
}

/** The low end of the margin: "−€200 or worse in 1 of 10". */
export function riskSaid(p10: number, currency: string): Said {
  return { strong: money(p10, currency), rest: `or ${p10 < 0 ? "worse" : "less"} in 1 of 10` };
}

/** Faults to cure and looks owed before riding or selling, the first few by name. */
export function owedSaid(
  { blocking, owed }: Appraisal["readiness"],
  nameOf: (check: string) => string,
  isPaper: (check: string) => boolean,
): Said {
  const counts = readyCounts({ blocking, owed }, isPaper);
  const names = [...new Set([...blocking, ...owed])].map((id) => uncapital(nameOf(id)));
  const more = names.length - NAMED;
  const told = more > 0 ? [...names.slice(0, NAMED), `${more} more`] : names;
  return { strong: capital(counts || "nothing blocks, no look owed"), rest: listed(told) };
}

/** The biggest unknown and what to do about it: the test worth more than deciding now, else the likeliest fault nobody looked for. */
export function unknownSaid(
  { decision, hidden }: Pick<Appraisal, "decision" | "hidden">,
  known: Pick<Reference, "checks">,
  nameOf: (id: string) => string,
): Said {
  const check = (id: string) => known.checks.find((one) => one.id === id);
  const takes = (id: string) => {
    const found = check(id);
    return found === undefined ? "" : `; ${minutes(found.minutes)} to check`;
  };
  const { lookFirst } = decision;
  if (lookFirst !== null)
    return { strong: nameOf(lookFirst), rest: `before anything else${takes(lookFirst)}` };
  const [likeliest] = hidden;
  if (likeliest === undefined) return { strong: "No likely fault left unseen", rest: "" };
  const found = check(likeliest.check);
  const level = uncapital(levelWords(found ?? { levels: [] }, likeliest.level));
  return {
    strong: nameOf(likeliest.check),
    rest: `${level} ${outOf(likeliest.probability, 10)}${takes(likeliest.check)}`,
  };
}
