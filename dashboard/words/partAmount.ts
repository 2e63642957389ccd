import { figure } from "./figure.ts";

/** What stands in place of a unit where it is no part: delivery, and tools. */
const NO_PART = /^(all orders|borrowed|bought)$/;

/** A unit of the parts' table in a sentence: "one bearing pair" as "bearing pair", "pair, one wheel" as "pair for a wheel". */
function unitOf(unit: string): string {
  return unit === "each" ? "" : unit.replace(/^one /, "").replace(/(,| for) one /, " for a ");
}

/** A unit as the name of a figure to type: "doses"; empty where single pieces are counted. */
export function unitWords(unit: string): string {
  // A metre is written by its sign, which has no plural.
  return unitOf(unit).replace(/^\w{2,}( pair)?/, "$&s");
}

/** How much of a part: "2", "1 dose", "1.5 m", "2 pairs for a wheel"; of what is no part, what is said of it: "all orders". */
export function partAmount(quantity: number, unit: string): string {
  if (NO_PART.test(unit)) return unit;
  return `${figure(quantity, 2)} ${quantity > 1 ? unitWords(unit) : unitOf(unit)}`.trim();
}
