import type { Appraisal, Check, Reading, Reference } from "../api/types.ts";
import { summary } from "../describe/summary.ts";
import { lengthUnit } from "../state/units.ts";
import { describedKind } from "../words/description.ts";
import { foundWords, offerWords, onTheLine } from "../words/spot.ts";
import { levelFound } from "../words/spotLooks.ts";
import { askingPrice } from "../words/spotStart.ts";
import { readingAt } from "./observed.ts";
import type { LookStep, Step } from "./trail.ts";

/** A step in words: what it found, and what that did to the offer. */
export interface Told {
  readonly found: string;
  readonly offer: string;
}

/**
 * The last step in words.
 * @param appraisal the newest answer; it may be older than the step
 */
export function told(step: Step, known: Reference, appraisal: Appraisal | null): Told {
  if (step.kind === "price") {
    return { found: askingPrice(step.set, known.currency), offer: "" };
  }
  if (step.kind === "pick")
    return { found: `${describedKind({ [step.name]: step.set }, known)}.`, offer: "" };
  const check = known.checks.find(({ id }) => id === step.check);
  if (check === undefined) return { found: "", offer: "" };
  const line = appraisal === null ? null : lineOf(check, step, appraisal);
  return {
    found: `${foundWords(check, step, seenWords(check, step))}.`,
    offer: line ?? offerWords(step, known.currency) ?? "",
  };
}

/** What was seen at a look, in a few words. */
export function seenWords(check: Check, step: LookStep): string {
  const reading = readingAt(step.set, step);
  const judged = reading?.measured === undefined ? reading?.level : undefined;
  return judged === undefined ? summary(check, reading, lengthUnit.value) : levelFound(check, judged);
}

/** Where the reading lies on the line between two levels. */
function lineOf(check: Check, step: LookStep, { findings }: Appraisal): string | null {
  const reading: Reading | undefined = readingAt(step.set, step);
  if (reading?.measured === undefined) return null;
  const finding = findings.find(
    (one) => one.check === step.check && (step.position === null || one.position === step.position),
  );
  return finding?.borderline === undefined ? null : onTheLine(check, finding.borderline);
}
