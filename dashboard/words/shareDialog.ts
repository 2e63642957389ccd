import type { Answers } from "../answers/answers.ts";
import { passedOnWords } from "./share.ts";

/** Texts of the box that passes a find on. */
export const SHARE_TITLE = "Share this find";
export const SHARE_SEND = "Send the link";
export const SHARE_COPY = "Copy the link";
export const SHARE_SAVE = "Save as a file";
export const SHARE_SAVED = "Saved.";

/** "In it: its name, the description and 44 checks made." */
export function inIt(name: string, answers: Answers, currency: string): string {
  return `In it: ${passedOnWords(name, answers, currency)}.`;
}

/** "The link, 812 letters". */
export function linkLabel(letters: number): string {
  return `The link, ${letters} letters`;
}
