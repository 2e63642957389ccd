import { capital } from "./count.ts";

/** Texts of the page that sets finds side by side, that hold no figure. */
export const COMPARE_SAME = "The same for all";
export const COMPARE_NOT_SAID = "not said";
export const COMPARE_ADD_OR_DROP = "Add or drop";
export const COMPARE_SAVE = "Save as CSV";
export const COMPARE_CHOOSE_SET = "Choose a set";
export const COMPARE_DONE_CHOOSING = "Done choosing";
export const COMPARE_WOULD_EARN = "What they would earn, differences first";
export const COMPARE_TOO_FEW = "Choose two finds or more to set them side by side.";
export const COMPARE_NONE_OPEN = "No course but leaving is open for any of them.";
export const COMPARE_FULL = "Six stand side by side, which is the most. Drop one to add another.";
export const COMPARE_HOW_MANY = "Two to six finds. A new one comes last.";
export const COMPARE_WHAT_IF = "What if";
export const COMPARE_WHAT_IF_HOW = "copy one, change an answer";
export const COMPARE_ALIKE = "All are described alike";
export const COMPARE_DESCRIBED = "What they are, differences first";
export const COMPARE_STOPPED = "Stopped";
export const COMPARE_NO_FIGURE = "no figure";
export const COMPARE_NO_WRITER = "What writes files did not load. Try again once there is a signal.";

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
  return `${COMPARE_SAME} (${n})`;
}
