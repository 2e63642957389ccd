import type { Appraisal, CourseId } from "../api/types.ts";

/** What one look on the spot is worth. */
export interface LookWorth {
  /** Highest less lowest price worth paying, over what may be seen; null once it is paid for. */
  readonly offerSwing: number | null;
  /** The course it would most likely change to. */
  readonly couldBecome: CourseId | null;
  /** Owed before riding or selling, whatever it is worth. */
  readonly owed: boolean;
}

/** What the answer says of looking on where the bike stands. */
export interface Advice {
  /** Ids of checks, best first. */
  readonly order: readonly string[];
  /** Those that are worth their minute, alone or together. */
  readonly worth: readonly string[];
  readonly of: Readonly<Record<string, LookWorth>>;
}

/** The advice of an answer; null where it gives none. */
export function adviceOf(appraisal: Appraisal | null): Advice | null {
  void appraisal;
  return null;
}
