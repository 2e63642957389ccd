import type { Answers } from "../answers/answers.ts";
import { isRecord } from "../answers/parsed.ts";
import { isPerWheel } from "../answers/reading.ts";
import type { Choice, Reading, Reference } from "../api/types.ts";

/** Where `raw` holds what `taken` does not, as paths: "observations/chain/level". */
export function leftOut(raw: unknown, taken: unknown, path: readonly string[] = []): readonly string[] {
  if (isRecord(raw) && isRecord(taken)) {
    return Object.entries(raw).flatMap(([key, value]) => leftOut(value, taken[key], [...path, key]));
  }
  return JSON.stringify(raw) === JSON.stringify(taken) ? [] : [path.join("/")];
}

type Known = Pick<Reference, "attributes" | "checks">;

/** Words of the answers that the catalogue does not hold, by path: they are kept, but nothing is worked out from them. */
export function notKnown({ attributes, observations }: Answers, known: Known): readonly string[] {
  const words = Object.entries(attributes).filter(([name, word]) => {
    const choices: readonly Choice[] | undefined = known.attributes[name as keyof Known["attributes"]];
    return !choices?.some(({ value }) => value === word);
  });
  const seen = Object.entries(observations).filter(([id, observation]) => {
    const check = known.checks.find((one) => one.id === id);
    const readings = isPerWheel(observation) ? [observation.front, observation.rear] : [observation];
    return check === undefined || readings.some((reading) => reading !== undefined && !isKnown(reading));
    function isKnown({ level }: Reading): boolean {
      return level === undefined || check?.levels.some((one) => one.id === level) === true;
    }
  });
  return [...words.map(([name]) => `attributes/${name}`), ...seen.map(([id]) => `observations/${id}`)];
}
