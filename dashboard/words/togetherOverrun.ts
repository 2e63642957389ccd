import type { ComparisonAnswer } from "../api/types.ts";
import { amount } from "./together.ts";

/** What the courses held to need of one budget: "Held courses need 12.4 h; you have 8 h: 4.4 h too little." */
export function overrunWords(
  { budget, given, needs, short }: ComparisonAnswer["overruns"][number],
  currency: string,
): string {
  const tell = (value: number) => (value === 0 ? "none" : amount(budget, value, currency));
  return `What you hold to needs ${tell(needs)}; you have ${tell(given)}: ${tell(short)} too little.`;
}
