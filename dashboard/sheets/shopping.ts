import { isPerWheel } from "../answers/reading.ts";
import type { AppraisalBody, Check, Observation, PlannedPart, Reading, Reference } from "../api/types.ts";
import { capital, uncapital } from "../words/count.ts";
import { figure } from "../words/figure.ts";
import { amount, type LengthUnit, lengthsFor } from "../words/length.ts";

/** A size to find out before ordering, and for which parts. */
export interface SizeRow {
  readonly what: string;
  /** Names of the parts it is for. */
  readonly parts: readonly string[];
  /** Name of the check that shows it; null where none does. */
  readonly check: string | null;
  /** What is known of it already, in words; null where nothing is. */
  readonly known: string | null;
}

/**
 * What to measure before the parts of a list are ordered, each size once, those that a check shows first and in the
 * catalogue's order.
 */
export function sizesToMeasure(
  list: readonly Pick<PlannedPart, "part" | "name">[],
  known: Pick<Reference, "parts" | "checks">,
  body: AppraisalBody,
  lengths: LengthUnit,
): readonly SizeRow[] {
  const rows = new Map<string, { check: string | undefined; parts: string[] }>();
  for (const { part, name } of list) {
    for (const { what, check } of known.parts.find(({ id }) => id === part)?.sizes ?? []) {
      const row = rows.get(what) ?? { check, parts: [] };
      row.parts.push(uncapital(name));
      rows.set(what, row);
    }
  }
  const place = (check: string | undefined) => {
    const at = known.checks.findIndex(({ id }) => id === check);
    return at < 0 ? known.checks.length : at;
  };
  return [...rows]
    .map(([what, { check, parts }]) => ({ what, parts, of: check }))
    .sort((a, b) => place(a.of) - place(b.of))
    .map(({ what, parts, of }) => {
      const check = known.checks.find(({ id }) => id === of);
      return {
        what: capital(what),
        parts,
        check: check?.name ?? null,
        known: check === undefined ? null : knownOf(check, body, lengths),
      };
    });
}

/** What the description and the readings say of a check's size: "left 37.5 mm, right 38 mm", "8 sprockets". */
function knownOf(check: Check, { find, observations }: AppraisalBody, lengths: LengthUnit): string | null {
  const described = [
    ...(check.id === "tyre-size" && find.tyreMarking !== undefined ? [`marked ${find.tyreMarking}`] : []),
    ...(check.id === "tyre-size" && find.beadSeatDiameterMm !== undefined
      ? [`${figure(find.beadSeatDiameterMm, 1)} mm`]
      : []),
    ...(check.id === "sprockets" && find.rearSprockets !== undefined
      ? [`${figure(find.rearSprockets)} sprockets`]
      : []),
  ];
  const observation = (observations as Readonly<Record<string, Observation | undefined>> | undefined)?.[
    check.id
  ];
  const words = [
    ...described,
    ...(observation === undefined ? [] : readingWords(check, observation, lengthsFor(check, lengths))),
  ];
  return words.length === 0 ? null : words.join(", ");
}

function readingWords(check: Check, observation: Observation, lengths: LengthUnit): readonly string[] {
  if (!isPerWheel(observation)) return measuredWords(check, observation, "", lengths);
  return (["front", "rear"] as const).flatMap((wheel) => {
    const reading = observation[wheel];
    return reading === undefined ? [] : measuredWords(check, reading, `${wheel}: `, lengths);
  });
}

function measuredWords(
  { measurement }: Check,
  { measured }: Reading,
  wheel: string,
  lengths: LengthUnit,
): readonly string[] {
  return (measurement?.inputs ?? []).flatMap(({ id, label, unit }) => {
    const value = measured?.[id];
    if (value === undefined) return [];
    return [`${wheel}${label} ${amount(value, unit, lengths)}`];
  });
}
