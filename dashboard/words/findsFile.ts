import type { ReadFile } from "../share/findsFile.ts";
import type { TakenFind } from "../share/takeFinds.ts";
import { counted, listed } from "./count.ts";

/** Why nothing was read from a file, and what to do. */
export const WRONG_FILE: Readonly<
  Record<Extract<ReadFile, { wrong: string }>["wrong"] | "too-large", string>
> = {
  "no-json": "This file is no JSON, or it was cut. Save it again where it came from.",
  foreign: "This file holds no finds. Choose one that was saved on this page.",
  newer: "This file was saved by a newer page than yours. Load this page again, then choose the file again.",
  "too-large": "This file is larger than 5 MB, so it was not read. Choose one that was saved on this page.",
};

/** What came of a file in a sentence: "2 finds taken, one kept beside yours, one here already, one entry not read." */
export function takenWords(taken: readonly TakenFind[], unread: number): string {
  const of = (as: TakenFind["as"]) => taken.filter((one) => one.as === as).length;
  const parts = [
    of("new") > 0 ? `${counted(of("new"), "find")} taken` : "",
    of("beside") > 0 ? `${counted(of("beside"), "find")} kept beside yours` : "",
    of("same") > 0 ? `${counted(of("same"), "find")} here already` : "",
    unread > 0 ? `${counted(unread, "entry", "entries")} not read` : "",
  ].filter((part) => part !== "");
  return parts.length === 0 ? "There is no find in this file." : `In this file: ${listed(parts)}.`;
}

/** What became of one find of the file, where there is more to say than that it was taken; null where there is not. */
export function takenLine({ find, as, lost }: TakenFind, name: string): string | null {
  const left = lost.length === 0 ? "" : ` Not read: ${listed(lost.map((path) => `"${path}"`))}.`;
  if (as === "beside")
    return `Yours differs from the one in the file. Both are kept, this one as \u201c${find.name}\u201d.${left}`;
  if (as === "same") return left === "" ? null : `${name}: here already.${left}`;
  return left === "" ? null : `${name}: taken.${left}`;
}

/** "Entry 3 of the file is no find: it has no id." */
export function unreadLine(place: number): string {
  return `Entry ${place} of the file is no find: it has no id. Not taken.`;
}

export const FILE_HOLDS =
  "The file holds your own finds whole: what you paid, spent and did with each, too. Your prices have files of their own.";

/** Texts of the panel that keeps one's own finds as a file. */
export const FINDS_FILE_TITLE = "Your own finds as a file";
export const FINDS_FILE_FACTS =
  "They stay in this browser alone. Save them to keep a copy, or to go on elsewhere.";
export const FINDS_FILE_OPEN = "Open a file of finds";
export const FINDS_FILE_DROP = "or drop it here";

/** "Save your three finds". */
export function saveYour(finds: number): string {
  return `Save your ${counted(finds, "find")}`;
}
