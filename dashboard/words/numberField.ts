import { figure } from "./figure.ts";

/** What was typed into a field for a number is none: how to write one, as the browser's locale has it. */
export function noNumber(like: number, digits: number): string {
  return `This is no number. Write it like ${figure(like, digits)}.`;
}

/** What the buttons beside a field do. */
export const less = (label: string) => `${label}: less`;
export const more = (label: string) => `${label}: more`;
