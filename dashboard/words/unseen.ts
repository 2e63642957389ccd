import type { Appraisal, HistoryFactor } from "../api/types.ts";
import { chance, fineChance, fineness, outOf } from "./chance.ts";
import { listed, uncapital } from "./count.ts";
import { figure } from "./figure.ts";

export type HiddenFault = Appraisal["hidden"][number];

/** What checks and levels are called. */
export interface CheckNames {
  check(id: string): string;
  /** The level in a word or two. */
  short(check: string, level: string): string;
}

const PAST: Readonly<Record<HistoryFactor, string>> = {
  weather: "stood in the wet",
  mileage: "was ridden a lot",
  neglect: "was not looked after",
  crash: "had a fall",
};
const FACTORS = Object.keys(PAST) as readonly HistoryFactor[];

/** A past that is less likely than this is told apart. */
const LOOKS_SO = 0.5;

/**
 * What its past seems to be: "It looks as if it stood in the wet (7 in 10) and was ridden a lot (5 in 10). Less likely: it had a fall (1 in 20)."
 * Null where the answer says nothing of it.
 */
export function historyWords(history: Appraisal["history"]): string | null {
  const told = FACTORS.filter((factor) => history[factor] > 0).sort((a, b) => history[b] - history[a]);
  if (told.length === 0) return null;
  const said = (factor: HistoryFactor) => `${PAST[factor]} (${fineChance(history[factor])})`;
  const likely = told.filter((factor) => history[factor] >= LOOKS_SO).map(said);
  const unlikely = told.filter((factor) => history[factor] < LOOKS_SO).map(said);
  if (likely.length === 0) return `Nothing in its past stands out: it ${either(unlikely)}.`;
  const rest = unlikely.length === 0 ? "" : ` Less likely: it ${either(unlikely)}.`;
  return `It looks as if it ${listed(likely)}.${rest}`;
}

const either = (items: readonly string[]) => listed(items).replace(/ and (?=[^,]*$)/, " or ");

/** "Not looked at, and likeliest at fault: tyre age (old in 4 of 10)". */
export function unseenTitle(hidden: readonly HiddenFault[], names: CheckNames): string {
  const [first] = hidden;
  if (first === undefined) return "No likely fault left unseen";
  const { check, level, probability } = first;
  const how = `${uncapital(names.short(check, level))} ${outOf(probability, fineness(probability))}`;
  return `Not looked at, and likeliest at fault: ${uncapital(names.check(check))} (${how})`;
}

/** Chances that differ by less are told as the same. */
const SAME = 0.01;

/** "Stuck: 3 in 10; usually 1 in 20 for such a bike". */
export function faultWords({ check, level, probability, prior }: HiddenFault, names: CheckNames): string {
  const coarse = [fineChance(probability), fineChance(prior)] as const;
  // Two chances that read the same and are not are told of 100.
  const blurred = coarse[0] === coarse[1] && Math.abs(probability - prior) >= SAME;
  const [now, usual] = blurred ? ([chance(probability, 100), chance(prior, 100)] as const) : coarse;
  const beside = now === usual ? "as usual for such a bike" : `usually ${usual} for such a bike`;
  return `${names.short(check, level)}: ${now}; ${beside}`;
}

/** A factor up to this is told to the tenth. */
const COARSE = 10;

/** "Frame rust depth (steel): pitted raises the odds 2.5 times." */
export function raisedWords(
  { raisedBy }: Pick<HiddenFault, "raisedBy">,
  names: CheckNames,
): readonly string[] {
  return raisedBy.map(({ check, level, oddsFactor }) => {
    const name = names.check(check);
    const word = names.short(check, level);
    const seen = name.endsWith("?") ? `${name} ${word}` : `${name}: ${uncapital(word)}`;
    const times = figure(oddsFactor, oddsFactor < COARSE ? 1 : 0);
    return `${seen} raises the odds ${times} times.`;
  });
}

/** Where the likely faults come from. */
export const UNSEEN_SOURCE =
  "Worked out from what was seen, by invented chances: one past links faults that nobody has looked for.";

/** "Less likely faults (5)", on the fold that holds them. */
export function lessLikely(n: number): string {
  return `Less likely faults (${n})`;
}
