import english from "./listing.en.json" with { type: "json" };

/** One sentence, or one for each plural form of the language (CLDR: one, few, many, other, ...), chosen by its `n`. */
export type Sentence =
  | string
  | ({ readonly other: string } & { readonly [form in Intl.LDMLPluralRule]?: string });

export type SentenceKey = keyof typeof english.sentences;

/** Everything a listing says in its own words. Another language is another file of this shape. */
export interface ListingCatalogue {
  /** BCP 47: rules plurals, lists, figures and money. */
  readonly locale: string;
  /** Whether a label of the reference loses its capital inside a sentence. */
  readonly labelsInside: "small" | "as written";
  readonly sentences: Readonly<Record<SentenceKey, Sentence>>;
}

export const ENGLISH = english as ListingCatalogue;

/** What stands in for a placeholder: words, a count, or a list of words. */
export type Filling = string | number | readonly string[];

/** Says a sentence of the catalogue with its placeholders filled. */
export type Say = (key: SentenceKey, fillings?: Readonly<Record<string, Filling>>) => string;

const PLACEHOLDER = /\{(\w+)\}/g;

/** The names of the placeholders in a text. */
export function placeholdersIn(text: string): readonly string[] {
  return [...text.matchAll(PLACEHOLDER)].map(([, name]) => name as string);
}

/**
 * The sayer of a catalogue: plural forms by Intl.PluralRules on `n`, lists by Intl.ListFormat, counts by Intl.NumberFormat.
 * @throws Error naming sentence and placeholder where a sentence asks for what is not given
 */
export function sayIn({ locale, sentences }: ListingCatalogue): Say {
  const plurals = new Intl.PluralRules(locale);
  const lists = new Intl.ListFormat(locale, { type: "conjunction" });
  const figures = new Intl.NumberFormat(locale);
  const filled = (filling: Filling): string => {
    if (typeof filling === "string") return filling;
    return typeof filling === "number" ? figures.format(filling) : lists.format(filling);
  };
  return (key, fillings = {}) => {
    const sentence = sentences[key];
    const text =
      typeof sentence === "string"
        ? sentence
        : (sentence[plurals.select(Number(fillings.n ?? 0))] ?? sentence.other);
    return text.replace(PLACEHOLDER, (_, name: string) => {
      const filling = fillings[name];
      if (filling === undefined)
        throw new Error(`listing sentence ${key} asks for {${name}}, which is not given: take it out`);
      return filled(filling);
    });
  };
}
