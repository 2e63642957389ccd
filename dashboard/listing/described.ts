import type { AppraisalBody, AttributeName, Choice, Reference } from "../api/types.ts";
import { small } from "../words/count.ts";
import type { ListingCatalogue, Say } from "./catalogue.ts";

/** What a listing tells of the description. How good the parts were when new is left out: it reads as praise. */
const TOLD: readonly AttributeName[] = [
  "category",
  "era",
  "frameMaterial",
  "forkMaterial",
  "fork",
  "hasCarbon",
  "stepThrough",
  "sizeClass",
  "drivetrain",
  "fixedGear",
  "brakeType",
  "rimMaterial",
  "barType",
  "completeness",
  "kept",
];

/** What a buyer asks first: named as not known where nobody said. */
const ASKED: readonly AttributeName[] = [
  "frameMaterial",
  "forkMaterial",
  "sizeClass",
  "drivetrain",
  "brakeType",
  "completeness",
  "kept",
];

/** The described bike in the words of the reference. */
export interface Described {
  /** Kind, era, material and size in a few words, for a title. */
  readonly what: string;
  readonly facts: readonly string[];
  /** What is not known, in one sentence; null where all that a buyer asks was described. */
  readonly unknown: string | null;
  /** Whom it fits, as far as it is known. */
  readonly forWhom: readonly string[];
}

/** Puts the description into words: only what was described, never a default. */
export function described(
  { find }: AppraisalBody,
  reference: Reference,
  catalogue: ListingCatalogue,
  say: Say,
): Described {
  const labelOf = (name: AttributeName): string | null => {
    const value = find[name];
    const choices: readonly Choice[] = reference.attributes[name];
    return value === undefined ? null : (choices.find((one) => one.value === value)?.label ?? value);
  };
  const inside = (text: string) => (catalogue.labelsInside === "small" ? small(text) : text);
  const fact = (name: AttributeName) => {
    const value = labelOf(name);
    return value === null ? [] : [say("fact", { label: reference.attributeLabels[name], value })];
  };
  const unknown = ASKED.filter((name) => find[name] === undefined).map((name) =>
    inside(reference.attributeLabels[name]),
  );
  if (find.tyreMarking === undefined) unknown.push(say("unknownTyre"));
  return {
    what: titleWords(find, labelOf, inside, catalogue, say),
    facts: [...TOLD.flatMap(fact), ...figures(find, reference, say)],
    unknown: unknown.length === 0 ? null : say("unknown", { what: unknown }),
    forWhom: forWhom(find, labelOf("sizeClass"), inside, say),
  };
}

type Found = AppraisalBody["find"];

function titleWords(
  find: Found,
  labelOf: (name: AttributeName) => string | null,
  inside: (text: string) => string,
  { locale }: ListingCatalogue,
  say: Say,
): string {
  const material = labelOf("frameMaterial");
  const size = labelOf("sizeClass");
  const words = [
    labelOf("category") ?? "",
    find.year === undefined ? (labelOf("era") ?? "") : String(find.year),
    material === null ? "" : say("titleMaterial", { material: inside(material) }),
    size === null ? "" : say("titleSize", { size: inside(size) }),
  ].filter((word) => word !== "");
  return new Intl.ListFormat(locale, { type: "unit", style: "short" }).format(words);
}

function figures(
  { year, tyreMarking, rearSprockets, frameSizeMm, missingParts }: Found,
  reference: Reference,
  say: Say,
): readonly string[] {
  const parts = (missingParts ?? []).map((id) => reference.parts.find((part) => part.id === id)?.name ?? id);
  return [
    // A year carries no thousands mark.
    ...(year === undefined ? [] : [say("factYear", { year: String(year) })]),
    ...(tyreMarking === undefined ? [] : [say("factTyre", { marking: tyreMarking })]),
    ...(rearSprockets === undefined ? [] : [say("factSprockets", { n: rearSprockets })]),
    ...(frameSizeMm === undefined ? [] : [say("factSizeMm", { n: frameSizeMm })]),
    ...(parts.length === 0 ? [] : [say("factMissing", { parts })]),
  ];
}

function forWhom(
  { category, frameSizeMm: n }: Found,
  label: string | null,
  inside: (text: string) => string,
  say: Say,
): readonly string[] {
  const size = label === null ? null : inside(label);
  const told =
    size === null
      ? n === undefined
        ? say("sizeUnknown")
        : say("sizeMeasuredOnly", { n })
      : n === undefined
        ? say("sizeKnown", { size })
        : say("sizeMeasured", { size, n });
  return category === "childrens" ? [told, say("children")] : [told];
}
