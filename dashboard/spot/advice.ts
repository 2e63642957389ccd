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

/** A test or query by someone else that is worth its fee and minutes. */
export interface TestWorth {
  readonly operation: string;
  readonly fee: number;
  readonly minutes: number;
}

/** What the answer says of looking on. */
export interface Advice {
  /** Ids of the checks to make where the bike stands, best first. */
  readonly order: readonly string[];
  /** Those that are worth their minute: alone, or where none is, together. */
  readonly worth: readonly string[];
  readonly of: Readonly<Record<string, LookWorth>>;
  /** Ids of the checks at home that are worth their minutes, best first. */
  readonly atHome: readonly string[];
  readonly tests: readonly TestWorth[];
}

/** The advice of an answer; null where there is none, as when everything is stopped. */
export function adviceOf(appraisal: Pick<Appraisal, "nextChecks" | "lookingOn"> | null): Advice | null {
  if (appraisal === null || appraisal.lookingOn === null) return null;
  const { nextChecks, lookingOn } = appraisal;
  const checks = nextChecks.flatMap((next) => ("check" in next ? [next] : []));
  const here = checks.filter(({ where }) => where === "spot");
  const alone = here.filter(({ netGain }) => netGain > 0).map(({ check }) => check);
  const together = lookingOn.spot.netGain > 0 ? lookingOn.spot.checks : [];
  return {
    order: here.map(({ check }) => check),
    worth: alone.length > 0 ? alone : together,
    of: Object.fromEntries(
      here.map(({ check, offerSwing, couldBecome, owed }) => [check, { offerSwing, couldBecome, owed }]),
    ),
    atHome: checks.filter(({ where, netGain }) => where !== "spot" && netGain > 0).map(({ check }) => check),
    tests: nextChecks.flatMap((next) =>
      "operation" in next && next.netGain > 0
        ? [{ operation: next.operation, fee: next.fee, minutes: next.minutes }]
        : [],
    ),
  };
}
