import { figure } from "./figure.ts";

/** The same for inches, which may be written as a fraction. */
export function noInches(like: number, fraction: string): string {
  return `This is no number. Write it like ${figure(like, 2)} or ${fraction}.`;
}

/** And beside a measurement. */
export const lessOf = (label: string) => `Less: ${label}`;

export const moreOf = (label: string) => `More: ${label}`;
