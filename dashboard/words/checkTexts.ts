import { capital } from "./count.ts";

/** Texts of the card on which a check is answered. */
export const CHECK_TEXTS = {
  apart: "Front and rear apart",
  refused: "refused",
  notLooked: "Not looked at",
  byEye: "Or judge by eye; a measurement wins",
  levels: "Levels, to judge by eye",
  finer: "More readings make it finer",
  noTools: "no tools",
} as const;

/** A measurement's label; one that can be done without says so. */
export function inputLabel(label: string, optional: boolean | undefined): string {
  return `${capital(label)}${optional ? " (if you have it)" : ""}`;
}
