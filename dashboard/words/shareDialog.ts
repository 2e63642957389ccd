import type { Answers } from "../answers/answers.ts";
import { isMade } from "../checks/made.ts";
import { counted, listed } from "./count.ts";
import { priceWords } from "./money.ts";

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

/** What the link and the file of a find hold: "its name, the description, 44 checks made, the month of sale and the €30 asked". */
export function passedOnWords(name: string, answers: Answers, currency: string): string {
  const made = Object.values(answers.observations).filter(isMade).length;
  return listed([
    ...(name.trim() === "" ? [] : ["its name"]),
    "the description",
    `${counted(made, "check")} made`,
    ...(answers.month === undefined ? [] : ["the month of sale"]),
    ...(answers.price === undefined ? [] : [`the ${priceWords(answers.price, currency)} asked`]),
  ]);
}

export const KEPT_BACK =
  "Not in it: what you paid, spent and did, the way there, your goal and your own prices.";

export const NO_SERVER =
  "The find stands in the link itself, behind the #. No server keeps it, and it cannot be called back: whoever has the link can read it.";

export const NO_LINK = "This browser cannot make links. Save the find as a file.";

/** The first line of a message with a link. */
export function messageWords(name: string): string {
  return name.trim() === "" ? "A find, worked out" : `${name.trim()}, worked out`;
}
