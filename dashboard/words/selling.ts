import type { PlannedWeek } from "../api/types.ts";
import type { Stretch } from "../selling/path.ts";
import { halfSold, stretches } from "../selling/path.ts";
import { fineChance, outOf } from "./chance.ts";
import { listed } from "./count.ts";
import { goalMoney } from "./money.ts";

/** A price that is asked or offered, as it stands on the label: whole where it is whole, else to the cent. */
export const askedMoney = goalMoney;

/**
 * The lowest offer to take, as it is told: up to the next whole unit, so that an offer of just that is taken, but never
 * beyond the price asked.
 */
export function lowestMoney(lowest: number, price: number, currency: string): string {
  // A float a hair above a whole is that whole.
  return askedMoney(Math.min(price, Math.ceil(lowest - 1e-9)), currency);
}

/** How it must be called before anything else, as its advert does. */
export type Road = "clear" | "not-roadworthy" | "frame-withdrawn";

const ROAD: Readonly<Record<Road, string>> = {
  clear: "",
  "not-roadworthy": "Not roadworthy, for repair or parts: ",
  "frame-withdrawn": "Not roadworthy, parts only, frame not sold: ",
};

/**
 * The plan in a sentence: "Ask €350, come down in week 4, take €300 this week."
 * @param shown whether the lowest offer may be seen
 */
export function planTitle(
  path: readonly PlannedWeek[],
  { currency, road, shown }: { readonly currency: string; readonly road: Road; readonly shown: boolean },
): string {
  const [first] = path;
  if (first === undefined) return "";
  const ask = `${road === "clear" ? "Ask" : "ask"} ${askedMoney(first.price, currency)}`;
  const take = shown ? `, take ${lowestMoney(first.lowestOffer, first.price, currency)} this week` : "";
  return `${ROAD[road]}${ask}, ${turnWords(stretches(path))}${take}.`;
}

/** More changes than this are told by their beginning alone. */
const MOST_TURNS = 3;

/** "come down in week 4", "come down in weeks 4, 6 and 9", "come down from week 3 on", "stay there". */
function turnWords(joined: readonly Stretch[]): string {
  const later = joined.slice(1);
  const [next] = later;
  if (next === undefined) return "stay there";
  const rises = later.map(({ price }, i) => price > (joined[i]?.price ?? price));
  const verb = rises.every((up) => up) ? "go up" : rises.some((up) => up) ? "change it" : "come down";
  if (later.length > MOST_TURNS) return `${verb} from week ${next.from} on`;
  const weeks = later.map(({ from }) => String(from));
  return `${verb} in week${weeks.length === 1 ? "" : "s"} ${listed(weeks)}`;
}

/** "week 4", "weeks 1 to 3". */
export function weekWords({ from, to }: Pick<Stretch, "from" | "to">): string {
  return from === to ? `week ${from}` : `weeks ${from} to ${to}`;
}

/** More prices than this are told by the first few and the last; the table holds all. */
const MOST_PRICES = 5;
const FIRST_PRICES = 3;

/** "€350 in weeks 1 to 3, €325 in weeks 4 to 5, €295 from week 6 on."; of many, the first few and the last. */
export function stepsWords(path: readonly PlannedWeek[], currency: string): string {
  const joined = stretches(path);
  const told = joined.map((stretch, i) => {
    const ask = askedMoney(stretch.price, currency);
    const last = i === joined.length - 1 && joined.length > 1 && stretch.from !== stretch.to;
    return last ? `${ask} from week ${stretch.from} on` : `${ask} in ${weekWords(stretch)}`;
  });
  if (told.length <= MOST_PRICES) return `${told.join(", ")}.`;
  return `${told.slice(0, FIRST_PRICES).join(", ")}, and so on, at last ${told.at(-1)}.`;
}

/** "Half of all outcomes have sold by week 3, 9 in 10 by week 8". */
export function soldTitle(path: readonly PlannedWeek[]): string {
  const last = path.at(-1);
  if (last === undefined) return "";
  const half = halfSold(path);
  const end = `by week ${last.week}`;
  if (half === null) return `It has sold ${outOf(last.chanceSold, 10)} outcomes ${end}`;
  if (half === last.week) return `Half of all outcomes have sold by week ${half}`;
  return `Half of all outcomes have sold by week ${half}, ${fineChance(last.chanceSold)} ${end}`;
}

/** What stands beside the chart's lines, and how to read it. */
export const CHART_WORDS = {
  ask: "ask",
  take: "take",
  up: "price",
  across: "week",
  read: "Full line: what to ask. Blocks: chance that it has sold by the end of the week; one full block is 1 in 10.",
  readLowest: "Dotted: the lowest offer worth taking.",
  lowest: "Show the lowest offer",
  shown: "The lowest offer worth taking stands in the title, the chart, the table and on the printed plan.",
  hidden: "The lowest offer worth taking is hidden until you show it, so that nobody at the door reads it.",
} as const;

/** The chart for whoever does not see it. */
export function chartSentence(path: readonly PlannedWeek[], currency: string, shown: boolean): string {
  const [first] = path;
  const last = path.at(-1);
  if (first === undefined || last === undefined) return "";
  const range = (from: string, to: string) =>
    from === to ? `stays at ${from}` : `goes from ${from} to ${to}`;
  const ask = range(askedMoney(first.price, currency), askedMoney(last.price, currency));
  const take = range(
    lowestMoney(first.lowestOffer, first.price, currency),
    lowestMoney(last.lowestOffer, last.price, currency),
  );
  return [
    `Price over weeks. ${soldTitle(path)}.`,
    `The asking price ${ask} in ${path.length} weeks.`,
    ...(shown ? [`The lowest offer worth taking ${take}.`] : []),
  ].join(" ");
}

/** What is told of one week. */
export function weekLines(
  { price, chanceSold, lowestOffer }: PlannedWeek,
  currency: string,
  shown: boolean,
): readonly string[] {
  return [
    `ask ${askedMoney(price, currency)}`,
    ...(shown ? [`take ${lowestMoney(lowestOffer, price, currency)} or more`] : []),
    `sold by then ${outOf(chanceSold, 10)}`,
  ];
}
