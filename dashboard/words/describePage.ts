/** Texts of the page on which a find is described, that hold no figure. */
export const DESCRIBE_TEXTS = {
  /** The link to a new one, where the address names none that is kept here. */
  begin: "Describe one",
  aNewOne: "a new one",
  fourPicks: "Say what it is in four picks",
  invented:
    "Prices and chances come from invented demo data; no figure here is a market price. What you enter stays in this browser.",
  callIt: "What do you call it?",
  name: "Name on the chart (optional)",
  besideOriginal: "See it beside its original",
  lookFirst: "Look before you pay",
  lookFurther: "Look further at home",
  narrows: "Each check you make narrows the range.",
  picksFirst: "The checks that apply come up once the four picks are made.",
} as const;

/** How many checks to make before paying, and what those not made count as. */
export function checksBefore(checks: number, minutes: number): string {
  return `${checks} checks, about ${minutes} minutes in all. What is not looked at counts as unknown, never as good.`;
}
