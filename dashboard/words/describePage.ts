/** The link to a new one, where the address names none that is kept here. */
export const DESCRIBE_BEGIN = "Describe one";
/** Texts of the page on which a find is described, that hold no figure. */
export const DESCRIBE_A_NEW_ONE = "a new one";
export const DESCRIBE_FOUR_PICKS = "Say what it is in four picks";
export const DESCRIBE_INVENTED =
  "Prices and chances come from invented demo data; no figure here is a market price. What you enter stays in this browser.";
export const DESCRIBE_CALL_IT = "What do you call it?";
export const DESCRIBE_NAME = "Name on the chart (optional)";
export const DESCRIBE_BESIDE_ORIGINAL = "See it beside its original";
export const DESCRIBE_LOOK_FIRST = "Look before you pay";
export const DESCRIBE_LOOK_FURTHER = "Look further at home";
export const DESCRIBE_NARROWS = "Each check you make narrows the range.";
export const DESCRIBE_PICKS_FIRST = "The checks that apply come up once the four picks are made.";

/** How many checks to make before paying, and what those not made count as. */
export function checksBefore(checks: number, minutes: number): string {
  return `${checks} checks, about ${minutes} minutes in all. What is not looked at counts as unknown, never as good.`;
}
