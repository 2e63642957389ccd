import { days } from "./time.ts";

/** What each measure of finds side by side is called, and what it counts. */
export const MEASURE_WORDS = {
  misses: { label: "Misses your goal", sub: "outcomes in 10" },
  margin: { label: "Margin", sub: "whole job" },
  hours: { label: "Your hours", sub: "selling included" },
  cash: { label: "Cash in it", sub: "until it is sold" },
  price: { label: "Price", sub: "asked, and most to pay" },
  risk: { label: "Risk", sub: "low end of the margin" },
  owed: { label: "Before it is ridden or sold", sub: "faults to cure, looks owed" },
  unknown: { label: "Biggest unknown", sub: "and what to do about it" },
} as const;

/** "3 weeks until sold". */
export function untilSold(elapsedDays: number): string {
  return `${days(elapsedDays)} until sold`;
}
