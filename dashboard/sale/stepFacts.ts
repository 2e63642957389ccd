import type { AppraisalBody } from "../api/types.ts";
import type { ChoiceField, Vocabulary } from "../ownPrices/vocabulary.ts";
import { small } from "../words/count.ts";

/** What was said of a bike, in the catalogue's words, by the step of its price that it bears on: "tandem, mid tier". */
export function stepFacts(
  find: AppraisalBody["find"],
  { choices }: Pick<Vocabulary, "choices">,
): Readonly<Partial<Record<string, string>>> {
  const said = (field: ChoiceField, suffix = "") => {
    const value = find[field];
    const label = choices[field].find((choice) => choice.value === value)?.label;
    return label === undefined ? [] : [`${small(label)}${suffix}`];
  };
  const facts = {
    kind: [...said("category"), ...said("componentTier", " tier")],
    era: said("era"),
    material: said("frameMaterial"),
    size: said("sizeClass"),
    place: said("place"),
  };
  return Object.fromEntries(
    Object.entries(facts).flatMap(([term, told]) => (told.length === 0 ? [] : [[term, told.join(", ")]])),
  );
}
