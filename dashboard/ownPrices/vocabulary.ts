import type { Choice, Reference } from "../api/types.ts";

/** The attributes of a sale that take a word of the catalogue. */
export const CHOICE_FIELDS = [
  "category",
  "era",
  "frameMaterial",
  "componentTier",
  "sizeClass",
  "place",
  "drivetrain",
  "stepThrough",
] as const;
export type ChoiceField = (typeof CHOICE_FIELDS)[number];

/** The words that own sales and own prices may use. */
export interface Vocabulary {
  readonly choices: Readonly<Record<ChoiceField, readonly Choice[]>>;
  readonly labels: Readonly<Record<ChoiceField, string>>;
  readonly parts: readonly { readonly id: string; readonly name: string; readonly unit: string }[];
}

/** The catalogue's words, without the kinds of bicycle that nothing is worked out for. */
export function vocabularyOf(
  reference: Pick<Reference, "attributes" | "attributeLabels" | "parts" | "defaults">,
): Vocabulary {
  const { attributes, attributeLabels, parts, defaults } = reference;
  const outOfScope: readonly string[] = defaults.outOfScope.map(({ category }) => category);
  const choices = Object.fromEntries(CHOICE_FIELDS.map((field) => [field, attributes[field]]));
  return {
    choices: {
      ...(choices as Vocabulary["choices"]),
      category: attributes.category.filter(({ value }) => !outOfScope.includes(value)),
    },
    labels: attributeLabels,
    parts: parts.map(({ id, name, unit }) => ({ id, name, unit })),
  };
}
