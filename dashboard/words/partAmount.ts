import { figure } from "./figure.ts";

/** The units of the parts' table in a sentence: of one, and of several. */
export const PART_UNITS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  each: ["", ""],
  bike: ["bike", "bikes"],
  dose: ["dose", "doses"],
  frame: ["frame", "frames"],
  job: ["job", "jobs"],
  m: ["m", "m"],
  "one bearing pair": ["bearing pair", "bearing pairs"],
  "one fork": ["fork", "forks"],
  "one hub": ["hub", "hubs"],
  "one job": ["job", "jobs"],
  "one wheel": ["wheel", "wheels"],
  pair: ["pair", "pairs"],
  "pair, one wheel": ["pair for a wheel", "pairs, one a wheel"],
  repair: ["repair", "repairs"],
  set: ["set", "sets"],
  "set for one bike": ["set for a bike", "sets for a bike"],
};

/** A unit as the name of a figure to type: "doses"; empty where single pieces are counted. */
export function unitWords(unit: string): string {
  return PART_UNITS[unit]?.[1] ?? unit;
}

/** How much of a part: "2", "1 dose", "1.5 m", "2 pairs"; of a unit that no table has, the unit alone ("all orders"). */
export function partAmount(quantity: number, unit: string): string {
  const words = PART_UNITS[unit];
  if (words === undefined) return unit;
  const word = words[quantity > 1 ? 1 : 0];
  return word === "" ? figure(quantity, 2) : `${figure(quantity, 2)} ${word}`;
}
