import type { CourseId } from "../api/types.ts";

interface CourseWords {
  readonly name: string;
  /** "Restore it": the advice, on a find called `it`. */
  readonly advice: (it: string) => string;
  /** "restoring": as the subject of a sentence. */
  readonly doing: string;
}

export const COURSE_WORDS: Readonly<Record<CourseId, CourseWords>> = {
  restore: { name: "Restore", advice: (it) => `Restore ${it}`, doing: "restoring" },
  "make-safe": { name: "Make safe", advice: (it) => `Make ${it} safe`, doing: "making safe" },
  "sell-as-found": {
    name: "Sell as found",
    advice: (it) => `Sell ${it} as found`,
    doing: "selling as found",
  },
  "break-for-parts": {
    name: "Break for parts",
    advice: (it) => `Break ${it} for parts`,
    doing: "breaking for parts",
  },
  leave: { name: "Leave", advice: (it) => `Leave ${it}`, doing: "leaving" },
};
