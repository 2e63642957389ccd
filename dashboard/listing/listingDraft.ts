import type { Appraisal, AppraisalBody, Reference } from "../api/types.ts";
import { stopReason } from "../words/verdict.ts";
import { ENGLISH, type ListingCatalogue, sayIn } from "./catalogue.ts";
import { described } from "./described.ts";
import { type Draft, type Refused, section } from "./draft.ts";
import { faultWords } from "./faultWords.ts";
import { jobsOf } from "./jobs.ts";
import { lookedOver } from "./lookedOver.ts";
import { notesFor, photosOf } from "./notesAndPhotos.ts";
import { buyerLines, openingLines, priceOf, titleOf } from "./openingWords.ts";
import { remainingFaults, type Work } from "./remainingFaults.ts";
import { roadworthiness } from "./roadworthiness.ts";
import { courseOf, defaultState, offeredStates, type SaleState } from "./saleStates.ts";
import { workSections } from "./workSections.ts";

/** What a draft is written from. */
export interface ListingInput {
  /** The answer of POST /v1/appraisals. */
  readonly answer: Appraisal;
  /** The question it answers. */
  readonly body: AppraisalBody;
  readonly reference: Reference;
  /** The state it is sold in; left out, or not open, the decided course's. Naming a rideable one says that its work is done. */
  readonly state?: SaleState | undefined;
  /** Keys (`jobKey`) of the plan's jobs that were not done after all. */
  readonly undone?: ReadonlySet<string> | undefined;
  /** In the answer's currency; left out, a blank to fill. */
  readonly askingPrice?: number | undefined;
  /** An invented find is labelled so. */
  readonly invented?: boolean | undefined;
  readonly catalogue?: ListingCatalogue | undefined;
}

/**
 * Drafts an honest advert: what is described, what was done, every fault that remains, every check not made. Where a fault stops riding, a look is
 * owed or the work is not proved, title and first line say "not roadworthy". Nothing is drafted for a find that is stopped or may not be sold.
 * The wording follows the catalogue; the rules are common practice, no source.
 */
export function listingDraft(input: ListingInput): Draft | Refused {
  const { answer, body, reference, undone = new Set(), catalogue = ENGLISH } = input;
  const say = sayIn(catalogue);
  const { checks } = reference;
  if (answer.decision.stop !== null)
    return refused(say("refusedStop", { reason: ended(stopReason(answer)) }));
  const offered = offeredStates(answer);
  const state =
    input.state !== undefined && offered.includes(input.state) ? input.state : defaultState(answer);
  if (state === null) return refused(say("refusedClosed", { reason: closedBecause(answer) }));

  const work: Work = { plan: courseOf(state, answer.courses)?.plan ?? null, undone };
  const remaining = remainingFaults(answer, work, checks);
  const road = roadworthiness(answer, state, remaining, work, checks);
  const words = faultWords(reference, say);
  if (road.forbidsSale.length > 0)
    return refused(say("refusedPaper", { faults: road.forbidsSale.map(words.told).join(" ") }));

  const bike = described(body, reference, catalogue, say);
  const looked = lookedOver(answer, body, reference, say);
  const price = priceOf(input.askingPrice, answer.currency, catalogue);
  const faults = remaining.filter(({ check }) => !words.isPaper(check));
  return {
    kind: "draft",
    state,
    price,
    title: titleOf(bike.what, state, road, say),
    opening: openingLines(state, road, words, input.invented === true, say),
    sections: [
      section("what", say, bike.unknown === null ? [] : [bike.unknown], bike.facts),
      ...(state === "parts" ? [] : [section("forWhom", say, bike.forWhom)]),
      ...workSections(state, answer, work, say),
      section("faults", say, faults.length === 0 ? [say("faultNone")] : [], faults.map(words.told)),
      section("checks", say, looked.lines, looked.notMade),
      section("papers", say, [...words.papers(answer), say("papersBill"), say("papersSerial")]),
      section("price", say, [
        price === null ? say("priceOpen", { currency: answer.currency }) : say("price", { price }),
      ]),
      section("buyer", say, buyerLines(state, road, say)),
    ],
    photos: photosOf(state, faults.map(words.name), say),
    notes: notesFor(state, road, jobsOf(work.plan).length > 0, words, say),
  };
}

function refused(why: string): Refused {
  return { kind: "refused", why };
}

/** A reason with its capital and full stop. */
function ended(text: string): string {
  const begun = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.?]$/.test(begun) ? begun : `${begun}.`;
}

function closedBecause({ courses }: Appraisal): string {
  const reasons = courses.flatMap(({ unavailableBecause }) =>
    unavailableBecause === undefined ? [] : [ended(unavailableBecause)],
  );
  return [...new Set(reasons)].join(" ");
}
