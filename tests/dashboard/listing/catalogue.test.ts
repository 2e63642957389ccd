import { describe, expect, test } from "vitest";
import type { Reference } from "../../../dashboard/api/types.ts";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import {
  ENGLISH,
  type ListingCatalogue,
  placeholdersIn,
  type Sentence,
  sayIn,
} from "../../../dashboard/listing/catalogue.ts";
import { draftText } from "../../../dashboard/listing/draft.ts";
import { listingDraft } from "../../../dashboard/listing/listingDraft.ts";
import { offeredStates } from "../../../dashboard/listing/saleStates.ts";
import { levelWords } from "../../../dashboard/words/plain.ts";
import { BANNED, inputFor, reference } from "./listing.ts";

const forms = (sentence: Sentence) => (typeof sentence === "string" ? [sentence] : Object.values(sentence));
const sentences = Object.entries(ENGLISH.sentences) as [keyof typeof ENGLISH.sentences, Sentence][];

/** Every sentence as its key in capitals and its placeholders: a language without a word of English. */
const MOCK: ListingCatalogue = {
  locale: "de",
  labelsInside: "as written",
  sentences: Object.fromEntries(
    sentences.map(([key, sentence]) => {
      const names = [...new Set(forms(sentence).flatMap(placeholdersIn))];
      return [key, `${key.toUpperCase()} ${names.map((name) => `{${name}}`).join(" ")}`];
    }),
  ) as ListingCatalogue["sentences"],
};

/** The same data with its labels in capitals, so that any other word shows. */
const SHOUTED = JSON.parse(
  JSON.stringify(reference, (key, value) =>
    typeof value === "string" && ["label", "name", "description"].includes(key) ? value.toUpperCase() : value,
  ),
) as Reference;

async function everyDraft(catalogue: ListingCatalogue, known: Reference): Promise<string[]> {
  const texts: string[] = [];
  for (const { body } of DEMO_FINDS) {
    const input = await inputFor(body, { catalogue, reference: known, invented: true });
    const states = offeredStates(input.answer);
    for (const state of states.length === 0 ? [undefined] : states) {
      const draft = listingDraft({ ...input, state });
      texts.push(
        draft.kind === "refused" ? draft.why : [draftText(draft), ...draft.photos, ...draft.notes].join("\n"),
      );
    }
  }
  return texts;
}

describe("the catalogue of sentences", () => {
  test("asks for the same placeholders in every plural form, but for the count itself", () => {
    for (const [key, sentence] of sentences) {
      const [first, ...others] = forms(sentence).map((form) =>
        [...new Set(placeholdersIn(form))].filter((name) => name !== "n").sort(),
      );
      for (const other of others) expect(other, key).toEqual(first);
    }
  });

  test("says nothing that no listing may say", () => {
    for (const [key, sentence] of sentences) {
      for (const form of forms(sentence)) expect(form, key).not.toMatch(BANNED);
    }
  });

  test("fills every placeholder of every draft, and leaves none", async () => {
    const texts = await everyDraft(ENGLISH, reference);
    expect(texts.length).toBeGreaterThan(20);
    for (const text of texts) expect(text).not.toMatch(/[{}]|undefined|NaN|null/);
  });

  test("is all that the draft says in its own words: another one leaves no English but the data's", async () => {
    const known: Reference = {
      ...SHOUTED,
      attributeLabels: Object.fromEntries(
        Object.entries(reference.attributeLabels).map(([name, label]) => [name, label.toUpperCase()]),
      ) as Reference["attributeLabels"],
    };
    for (const text of await everyDraft(MOCK, known)) {
      const own = strippedOfData(text);
      expect(own).toMatch(/HEADINGWHAT|REFUSEDSTOP/);
      // What is left in small letters beside the data and the joints of Intl's German.
      expect(own.match(/\b(?!und\b)[a-z]{2,}\b/g) ?? [], own).toEqual([]);
    }
  });

  test("refuses a sentence whose placeholder is not given, by name", () => {
    expect(() => sayIn(ENGLISH)("fault", { check: "Saddle", level: "Torn" })).toThrow(
      /fault asks for \{note\}/,
    );
  });

  test("chooses the plural form of the catalogue's own language", () => {
    const polish: ListingCatalogue = {
      ...MOCK,
      locale: "pl",
      sentences: {
        ...MOCK.sentences,
        checksOpen: { one: "{n} A", few: "{n} B", many: "{n} C", other: "{n} D" },
      },
    };
    const say = sayIn(polish);
    expect([1, 3, 5, 22].map((n) => say("checksOpen", { n }))).toEqual(["1 A", "3 B", "5 C", "22 B"]);
    expect([0, 1, 2].map((n) => sayIn(ENGLISH)("checksOpen", { n }))).toEqual([
      "0 checks not made:",
      "1 check not made:",
      "2 checks not made:",
    ]);
  });
});

/** Words that come from the answer as they are: notes of findings, names of jobs, the reason of a stop. */
function strippedOfData(text: string): string {
  const data = [...NOTES].sort((a, b) => b.length - a.length);
  return data.reduce((rest, note) => rest.split(note).join(""), text);
}

const NOTES = new Set<string>();
for (const { body } of DEMO_FINDS) {
  const { answer } = await inputFor(body);
  for (const { check, level, note } of answer.findings) {
    NOTES.add(note);
    const levels = SHOUTED.checks.find(({ id }) => id === check)?.levels ?? [];
    NOTES.add(`${levelWords({ levels }, level)} `);
  }
  for (const { plan } of answer.courses) for (const { name } of plan?.operations ?? []) NOTES.add(name);
  if (answer.decision.stop !== null) NOTES.add("erial number: filed, drilled or over-stamped");
}
