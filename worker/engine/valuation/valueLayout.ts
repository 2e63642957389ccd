import { ATTRIBUTE_VALUES, ERAS, type Era, TIERS, type Tier } from "../bicycle.ts";
import {
  NOT_RIDING,
  type NotRiding,
  PAPERS,
  type Papers,
  PRESENTATIONS,
  type Presentation,
} from "./saleDescription.ts";
import type { ValueDesign } from "./valueTables.ts";

/** Stands for a level that is part of the plain reference bike and so has no column. */
export const REFERENCE = -1;

/** Categories that have a price; the one out of scope has none. */
export const PRICED_CATEGORIES: readonly string[] = ATTRIBUTE_VALUES.category.filter(
  (category) => category !== "e-bike-out-of-scope",
);

/** What the plain reference bike is, where the design leaves no choice. */
const PLAIN = {
  era: "2010s",
  size: "middle",
  presentation: "plain",
  papers: "bill",
  month: 7,
  place: "town",
} as const;

type Columns<Level extends string> = Readonly<Record<Level, number>>;

/** Names of the regression's columns, and where each level of each driver has its column. Built once for a model. */
export interface ValueLayout {
  readonly design: ValueDesign;
  readonly names: readonly string[];
  /** The columns from `start` on that the demo sales fill; the others wait for sales of one's own. */
  readonly demo: { readonly start: number; readonly size: number };
  readonly intercept: number;
  readonly kind: Readonly<Record<string, Columns<Tier>>>;
  readonly era: Readonly<Record<string, Columns<Era>>>;
  readonly material: readonly number[];
  readonly size: Columns<string>;
  readonly fashion: readonly number[];
  readonly originality: { readonly changed: number; readonly mixed: number; readonly original: number };
  readonly desirability: number;
  readonly riding: Readonly<
    Record<Tier, { readonly needsWork: number; readonly tired: number; readonly restored: number }>
  >;
  readonly notRiding: Readonly<Record<Tier, Columns<NotRiding>>>;
  readonly presentation: Columns<Presentation>;
  readonly papers: Columns<Papers>;
  /** By month, January at 0. */
  readonly month: readonly number[];
  readonly place: Columns<string>;
  readonly market: number;
  readonly marketOfCategory: Readonly<Record<string, number>>;
  readonly asked: number;
  readonly sameModel: number;
}

/**
 * Lays out the columns of a design, always in the same order: first the many of which a bike has one alone, so that a row folded into R meets few
 * rows of it (see foldRow).
 */
export function valueLayout(design: ValueDesign): ValueLayout {
  const names: string[] = [];
  const column = (name: string) => names.push(name) - 1;
  const levels = <Level extends string>(driver: string, all: readonly Level[], plain?: Level) =>
    Object.fromEntries(
      all.map((level) => [level, level === plain ? REFERENCE : column(`${driver}:${level}`)]),
    ) as Columns<Level>;
  const { category, tier } = design.reference;
  const marketOfCategory = table(PRICED_CATEGORIES, (one) => column(`market:${one}`));
  const start = names.length;
  const kind = table(PRICED_CATEGORIES, (one) =>
    levels(`kind:${one}`, TIERS, one === category ? tier : undefined),
  );
  const eraGroups = table([...design.eraGroups, "other"], (group) => levels(`era:${group}`, ERAS, PLAIN.era));
  const era = table(PRICED_CATEGORIES, (one) => eraGroups[design.eraGroups.includes(one) ? one : "other"]!);
  const rest = {
    material: design.material.map(({ name }) => column(`material:${name}`)),
    size: levels("size", ATTRIBUTE_VALUES.sizeClass, PLAIN.size),
    fashion: design.fashion.map(({ name }) => column(`fashion:${name}`)),
    originality: {
      changed: column("originality:changed"),
      mixed: column("originality:mixed"),
      original: column("originality:original"),
    },
    desirability: column("desirability"),
    riding: table(TIERS, (one) => ({
      needsWork: column(`condition:${one}:needs-work`),
      tired: column(`condition:${one}:tired`),
      restored: column(`condition:${one}:restored`),
    })),
    notRiding: table(TIERS, (one) => levels(`condition:${one}`, NOT_RIDING)),
    presentation: levels("presentation", PRESENTATIONS, PLAIN.presentation),
    papers: levels("papers", PAPERS, PLAIN.papers),
    month: Array.from({ length: 12 }, (_, index) =>
      index + 1 === PLAIN.month ? REFERENCE : column(`month:${index + 1}`),
    ),
    place: levels("place", ATTRIBUTE_VALUES.place, PLAIN.place),
    intercept: column("level"),
  };
  const size = names.length - start;
  return {
    design,
    names,
    demo: { start, size },
    kind,
    era,
    ...rest,
    marketOfCategory,
    market: column("market"),
    asked: column("asked"),
    sameModel: column("same-model"),
  };
}

function table<Key extends string, Value>(keys: readonly Key[], of: (key: Key) => Value): Record<Key, Value> {
  return Object.fromEntries(keys.map((key) => [key, of(key)])) as Record<Key, Value>;
}
