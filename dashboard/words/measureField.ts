import { figure } from "./figure.ts";

/** What was typed for a length in inches is no number: how to write one, as a decimal or a fraction. */
export function noInches(like: number, fraction: string): string {
  return `This is no number. Write it like ${figure(like, 2)} or ${fraction}.`;
}

/** What the buttons beside a measurement do. */
export const lessOf = (label: string) => `Less: ${label}`;
export const moreOf = (label: string) => `More: ${label}`;
