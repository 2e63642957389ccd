import { capital } from "./count.ts";

/** Texts of the page that sets finds side by side, that hold no figure. */
export const COMPARE_TEXTS = {
  same: "The same for all",
  notSaid: "not said",
  addOrDrop: "Add or drop",
  save: "Save as CSV",
  chooseSet: "Choose a set",
  doneChoosing: "Done choosing",
  wouldEarn: "What they would earn, differences first",
  tooFew: "Choose two finds or more to set them side by side.",
  noneOpen: "No course but leaving is open for any of them.",
  full: "Six stand side by side, which is the most. Drop one to add another.",
  howMany: "Two to six finds. A new one comes last.",
  whatIf: "What if",
  whatIfHow: "copy one, change an answer",
  alike: "All are described alike",
  described: "What they are, differences first",
  stopped: "Stopped",
  noFigure: "no figure",
  noWriter: "What writes files did not load. Try again once there is a signal.",
} as const;

/** Why a find stands without a rate, where it has no answer yet. */
export const NOT_WORKED_OUT = "not worked out";

/** "The grey one is hardly looked at.", before how little. */
export function hardlyLookedAt(called: string): string {
  return `${capital(called)} is hardly looked at.`;
}

/** How many checks are open, and what that means for its bar. */
export function openChecks({ applicable, made }: { applicable: number; made: number }): string {
  return `${applicable - made} of its ${applicable} checks are not made. Its bar will shorten, and may move either way.`;
}

/** "Details in which they differ (3)", on the fold that holds them. */
export function detailsApart(n: number): string {
  return `Details in which they differ (${n})`;
}

/** "The same for all (9)", on the fold that holds them. */
export function detailsAlike(n: number): string {
  return `${COMPARE_TEXTS.same} (${n})`;
}
