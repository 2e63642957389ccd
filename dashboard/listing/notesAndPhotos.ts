import type { Say, SentenceKey } from "./catalogue.ts";
import type { FaultWords } from "./faultWords.ts";
import type { Roadworthiness } from "./roadworthiness.ts";
import { isRideable, type SaleState } from "./saleStates.ts";

const WHOLE: readonly SentenceKey[] = [
  "photoDriveSide",
  "photoOtherSide",
  "photoFrontRear",
  "photoTransmission",
  "photoBrakes",
  "photoTyres",
];

/** The pictures to take: the usual ones, and one of every fault. */
export function photosOf(state: SaleState, faults: readonly string[], say: Say): readonly string[] {
  const usual = state === "parts" ? (["photoPieces"] as const) : WHOLE;
  return [
    ...usual.map((key) => say(key)),
    ...faults.map((fault) => say("photoFault", { fault })),
    say("photoSerial"),
  ];
}

/** What the seller should see to before publishing. */
export function notesFor(
  state: SaleState,
  { owedToRide }: Roadworthiness,
  hasJobs: boolean,
  words: FaultWords,
  say: Say,
): readonly string[] {
  return [
    ...(isRideable(state) && hasJobs ? [say("noteWork")] : []),
    ...(state !== "parts" && owedToRide.length > 0
      ? [say("noteOwed", { checks: owedToRide.map(words.check) })]
      : []),
    say("notePapers"),
    say("noteFaults"),
    say("notePrivacy"),
  ];
}
