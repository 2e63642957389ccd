import type { Appraisal, Check, NextCheck, Reference, ReportedFinding } from "../api/types.ts";
import { type Made, madeOn } from "../checks/made.ts";

/** What looking at a check is worth, as the answer says it. */
export type NextLook = Extract<NextCheck, { check: string }>;

/** A paid test, or a query. */
export type PaidTest = Extract<NextCheck, { operation: string }>;

/** The checks that the answer ranks, best first; none before there is an answer. */
export function rankedLooks(appraisal: Pick<Appraisal, "nextChecks"> | null): readonly NextLook[] {
  return (appraisal?.nextChecks ?? []).filter((look): look is NextLook => "check" in look);
}

/** Paid tests and queries that are worth their fee and minutes. */
export function paidTests(looks: readonly NextCheck[]): readonly PaidTest[] {
  return looks.filter((look): look is PaidTest => "operation" in look && look.netGain > 0);
}

/** The checks of a place whose list is worth its minutes together, although each alone may not be. */
export function worthTogether(lookingOn: Appraisal["lookingOn"]): ReadonlySet<string> {
  const lists = lookingOn === null ? [] : [lookingOn.spot, lookingOn.bench];
  return new Set(lists.filter(({ netGain }) => netGain > 0).flatMap(({ checks }) => checks));
}

/** A check not made yet, with what looking is worth where the answer says so. */
export interface OpenLook {
  readonly check: Check;
  readonly worth: NextLook | null;
}

const PRIORITY: readonly Check["priority"][] = ["triage", "core", "extra"];

/**
 * The checks still open, those first that gain most for a minute; what the answer does not rank follows, owed looks
 * first, then in the catalogue's priority and the shorter before the longer.
 * @param checks that apply
 */
export function openLooks(
  checks: readonly Check[],
  made: Made,
  ranked: readonly NextLook[],
): readonly OpenLook[] {
  const open = checks.filter((check) => !madeOn(check, made));
  const looks = open.map((check) => ({
    check,
    worth: ranked.find((look) => look.check === check.id) ?? null,
  }));
  return looks.sort(
    (a, b) =>
      (b.worth?.gainPerMinute ?? -Infinity) - (a.worth?.gainPerMinute ?? -Infinity) ||
      Number(b.check.ifNotChecked === "block") - Number(a.check.ifNotChecked === "block") ||
      PRIORITY.indexOf(a.check.priority) - PRIORITY.indexOf(b.check.priority) ||
      a.check.minutes - b.check.minutes,
  );
}

/** Checks that can be made on the stand as the bike is: those that need it taken apart wait for their job. */
export function isAtHand({ where }: Pick<Check, "where">): boolean {
  return where !== "dismantled";
}

/** One of the catalogue's groups, as far as it applies to a bike. */
export interface Progress {
  readonly group: string;
  readonly label: string;
  readonly checks: readonly Check[];
  readonly made: number;
}

/** How far each of the seven groups was looked at; a group none of whose checks applies is left out. */
export function progressOf(
  { groups }: Pick<Reference, "groups">,
  checks: readonly Check[],
  isDone: (check: Check) => boolean,
): readonly Progress[] {
  return groups.flatMap(({ value, label }) => {
    const inGroup = checks.filter(({ group }) => group === value);
    if (inGroup.length === 0) return [];
    return [{ group: value, label, checks: inGroup, made: inGroup.filter(isDone).length }];
  });
}

/** The worst that was found at a check; undefined where it was not made. */
export function worstOf(findings: readonly ReportedFinding[], check: string): ReportedFinding | undefined {
  return findings
    .filter((finding) => finding.check === check)
    .sort((a, b) => Number(b.safetyBlock) - Number(a.safetyBlock) || b.severity - a.severity)[0];
}

/** Checks among those given whose name or way of looking holds every word typed. */
export function found(checks: readonly Check[], typed: string): readonly Check[] {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  return checks.filter(({ name, how, levels }) => {
    const text = `${name} ${how} ${levels.map(({ description }) => description).join(" ")}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
}
