import type { Say, SentenceKey } from "./catalogue.ts";
import type { SaleState } from "./saleStates.ts";

/** A part of the advert under its own heading. */
export interface DraftSection {
  readonly id: SectionId;
  readonly heading: string;
  readonly lines: readonly string[];
  readonly items: readonly string[];
}

export type SectionId =
  | "what"
  | "forWhom"
  | "done"
  | "notDone"
  | "faults"
  | "checks"
  | "papers"
  | "price"
  | "buyer";

const HEADINGS: Readonly<Record<SectionId, SentenceKey>> = {
  what: "headingWhat",
  forWhom: "headingForWhom",
  done: "headingDone",
  notDone: "headingNotDone",
  faults: "headingFaults",
  checks: "headingChecks",
  papers: "headingPapers",
  price: "headingPrice",
  buyer: "headingBuyer",
};

/** An advert to be edited, with what goes along with it. */
export interface Draft {
  readonly kind: "draft";
  readonly state: SaleState;
  readonly title: string;
  /** The lines under the title; the first says that it is not roadworthy, where it is not. */
  readonly opening: readonly string[];
  readonly sections: readonly DraftSection[];
  /** Pictures to take. */
  readonly photos: readonly string[];
  /** For the seller alone, before publishing. */
  readonly notes: readonly string[];
  /** As the price line writes it; null while there is none. */
  readonly price: string | null;
}

/** Why there is no advert. */
export interface Refused {
  readonly kind: "refused";
  readonly why: string;
}

export function section(
  id: SectionId,
  say: Say,
  lines: readonly string[],
  items: readonly string[] = [],
): DraftSection {
  return { id, heading: say(HEADINGS[id]), lines, items };
}

/** The advert as plain text, for a form that takes no other. */
export function draftText({ title, opening, sections }: Draft): string {
  const parts = sections.map(({ heading, lines, items }) =>
    [heading, ...lines, ...items.map((item) => `- ${item}`)].join("\n"),
  );
  return [title, opening.join("\n"), ...parts].join("\n\n");
}
