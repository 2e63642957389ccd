import type { Appraisal, AppraisalBody, Reference } from "../../../dashboard/api/types.ts";
import { applicable, settled } from "../../../dashboard/checks/applies.ts";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import { type Draft, draftText } from "../../../dashboard/listing/draft.ts";
import { type ListingInput, listingDraft } from "../../../dashboard/listing/listingDraft.ts";
import { appraised, referenceOf } from "../fixtures/service.ts";

export const reference: Reference = await referenceOf();

/** What no listing may say. */
export const BANNED = /\b(safe|safely|grade|excellent|guaranteed?|score|deal|perfect|great)\b|!/i;

/** A hybrid with every check that applies answered without a fault, but for what is given. */
export const HYBRID: AppraisalBody["find"] = {
  category: "hybrid",
  era: "2010s",
  frameMaterial: "aluminium",
  componentTier: "mid",
  sizeClass: "middle",
  brakeType: "rim-linear-pull",
  drivetrain: "derailleur",
  kept: "indoors",
};

export type Levels = Readonly<Record<string, string>>;

export function soundBut(find: AppraisalBody["find"], levels: Levels = {}): AppraisalBody {
  const checks = applicable(reference.checks, settled(find, reference.attributeDefaults));
  const observations = checks.map(({ id, levels: known }) => [
    id,
    { level: levels[id] ?? known[0]?.id ?? "" },
  ]);
  return { find, observations: Object.fromEntries(observations) };
}

export function demoBody(id: string): AppraisalBody {
  const find = DEMO_FINDS.find((one) => one.id === id);
  if (find === undefined) throw new Error(`no demo find ${id}`);
  return find.body;
}

/** The draft for a body, as the service answers it. */
export async function inputFor(
  body: AppraisalBody,
  more: Partial<ListingInput> = {},
): Promise<ListingInput & { answer: Appraisal }> {
  return { answer: await appraised(body), body, reference, ...more };
}

/** A draft that there must be. */
export function drafted(input: ListingInput): Draft & { readonly text: string } {
  const draft = listingDraft(input);
  if (draft.kind !== "draft") throw new Error(draft.why);
  return { ...draft, text: draftText(draft) };
}

export function sectionOf({ sections }: Draft, id: Draft["sections"][number]["id"]) {
  const found = sections.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no section ${id}`);
  return found;
}
