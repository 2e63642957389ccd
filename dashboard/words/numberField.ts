import { figure } from "./figure.ts";

/** What was typed into a field for a number is none: how to write one, as the browser's locale has it. */
export function noNumber(like: number, digits: number): string {
  return `This is no number. Write it like ${figure(like, digits)}.`;
}

/** The same for inches, which may be written as a fraction. */
export function noInches(like: number, fraction: string): string {
  return `This is no number. Write it like ${figure(like, 2)} or ${fraction}.`;
}

/** What the buttons beside a field do. */
export const less = (label: string) => `${label}: less`;
export const more = (label: string) => `${label}: more`;
/** And beside a measurement. */
export const lessOf = (label: string) => `Less: ${label}`;
export const moreOf = (label: string) => `More: ${label}`;
