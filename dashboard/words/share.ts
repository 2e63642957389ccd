import { type Answers, isComplete } from "../answers/answers.ts";
import { listed } from "./count.ts";

/** What is wrong with a link, and what to do. */
export const WRONG_LINK = {
  empty: {
    title: "There is no find in this address.",
    text: "The part of the link behind # is missing: some programs cut it off. Copy the whole link and open it again, or ask for the find as a file.",
  },
  broken: {
    title: "This link is cut or altered.",
    text: "A part of it is missing or was changed on the way. Copy the whole link, in one piece, or ask for it to be sent again, or for the find as a file.",
  },
  newer: {
    title: "This link was made by a newer page than yours.",
    text: "Load this page again to get the newer one. If that changes nothing, ask for the find to be sent from the page you use.",
  },
  foreign: {
    title: "This link holds no find.",
    text: "What stands behind # was not made by this page. Ask for the link again.",
  },
} as const;

/** The mark of a find that was sent. */
export const NOT_KEPT = "shared with you; not kept yet";

/** What a link held that nothing is worked out from; empty where there is nothing. */
export function leftOutWords(paths: readonly string[]): string {
  if (paths.length === 0) return "";
  const told = paths.map((path) => `"${path.split("/").slice(1).join(", ") || path}"`);
  return `Left out, as this page does not know it: ${listed(told)}.`;
}

/** Whether a shared find says enough, in words for its heading. */
export function tooLittle(answers: Answers): string | null {
  return isComplete(answers)
    ? null
    : "This find is not described far enough to work out. Keep it, and describe it further.";
}
