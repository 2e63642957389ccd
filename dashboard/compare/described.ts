import type { AppraisalBody, AttributeName, Reference } from "../api/types.ts";
import {
  DESCRIBED_DESIRABILITY,
  DESCRIBED_MONTH,
  DESCRIBED_ORIGINALITY,
  DESCRIBED_SPROCKETS,
  DESCRIBED_TYRE,
  shareOfOne,
} from "../words/describedFields.ts";
import { DESIRABILITY, FIELD_NAMES, MONTHS, ORIGINALITY } from "../words/fields.ts";

const MAIN: ReadonlySet<AttributeName> = new Set([
  "category",
  "era",
  "frameMaterial",
  "componentTier",
  "sizeClass",
  "completeness",
  "kept",
  "place",
]);

/** One line of the description, find by find. */
export interface DescribedRow {
  readonly label: string;
  /** In the order of the finds; null where nobody said. */
  readonly values: readonly (string | null)[];
  /** What a bike is and how it was kept, not how it is built. */
  readonly main: boolean;
}

/** The description find by find: what differs, and what is the same for all. What nobody said of any find is left out. */
export interface DescribedRows {
  readonly apart: readonly DescribedRow[];
  readonly same: readonly DescribedRow[];
}

/** @param bodies the questions about the finds, in their order */
export function describedRows(bodies: readonly AppraisalBody[], known: Reference): DescribedRows {
  const rows = describedFields(known)
    .map(({ label, wordOf, main = false }) => ({ label, values: bodies.map(wordOf), main }))
    .filter(({ values }) => values.some((value) => value !== null));
  const same = rows.filter(({ values }) => new Set(values).size === 1);
  return { apart: rows.filter((row) => !same.includes(row)), same };
}

/** A part of the description in words. */
export interface DescribedField {
  readonly label: string;
  readonly wordOf: (body: AppraisalBody) => string | null;
  readonly main?: boolean;
}

/** Every part of the description, in the form's order. */
export function describedFields(known: Reference): readonly DescribedField[] {
  const words = (Object.keys(FIELD_NAMES) as AttributeName[]).map((name) => ({
    label: known.attributeLabels[name],
    main: MAIN.has(name),
    wordOf: ({ find }: AppraisalBody) => labelOf(known.attributes[name], find[name]),
  }));
  return [
    ...words,
    { label: DESCRIBED_ORIGINALITY, wordOf: ({ find }) => labelOf(ORIGINALITY, find.originality) },
    { label: DESCRIBED_DESIRABILITY, wordOf: ({ find }) => labelOf(DESIRABILITY, find.desirability) },
    { label: DESCRIBED_TYRE, wordOf: ({ find }) => find.tyreMarking ?? null },
    { label: DESCRIBED_SPROCKETS, wordOf: ({ find }) => find.rearSprockets?.toString() ?? null },
    { label: DESCRIBED_MONTH, wordOf: ({ workshop }) => MONTHS[(workshop?.month ?? 0) - 1] ?? null },
  ];
}

/** The label of a choice; of a share that lies between two, the figure itself. */
function labelOf(
  choices: readonly { readonly value: string; readonly label: string }[],
  value: string | number | undefined,
): string | null {
  if (value === undefined) return null;
  return (
    choices.find((choice) => choice.value === String(value))?.label ??
    (typeof value === "number" ? shareOfOne(value) : value)
  );
}
