import { isPerWheel } from "../answers/reading.ts";
import type { Check, Observation, Reading, Reference, ReportedFinding } from "../api/types.ts";
import { applicable, type Described, safetyOf, settled } from "../checks/applies.ts";
import { madeOn } from "../checks/made.ts";
import { capital, uncapital } from "../words/count.ts";
import { figure } from "../words/figure.ts";
import { bareLength, type LengthUnit, lengthsFor, withLengths } from "../words/length.ts";
import { levelWords } from "../words/plain.ts";

/** What a check is ticked or measured on. */
export type Wheel = "bike" | "front" | "rear";

/** A box to tick: a level of a check, or a mark beside a measurement. */
export interface TickRow {
  readonly id: string;
  readonly words: string;
  /** Where it is ticked already. */
  readonly ticked: readonly Wheel[];
  /** Found, it stops riding or selling. */
  readonly stops: boolean;
}

/** A figure to write down. */
export interface BlankRow {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  /** What was measured already, as it is written down. */
  readonly filled: Readonly<Partial<Record<Wheel, string>>>;
}

/** A check on paper. */
export interface CheckRow {
  readonly id: string;
  readonly name: string;
  readonly how: string;
  readonly minutes: number;
  /** Where it is looked at: on the whole bike, or on each wheel. */
  readonly wheels: readonly Wheel[];
  readonly levels: readonly TickRow[];
  readonly blanks: readonly BlankRow[];
  /** Belongs to the first look, before a price is offered. */
  readonly first: boolean;
  readonly made: boolean;
  /** Must be made before the bike is sold as rideable. */
  readonly owed: boolean;
}

/** The checks of one group, in the catalogue's order. */
export interface CheckGroup {
  readonly name: string;
  readonly rows: readonly CheckRow[];
}

/** What is known of a bike already. */
export interface Seen {
  readonly observations: Readonly<Record<string, Observation | undefined>>;
  readonly findings: readonly Pick<ReportedFinding, "check" | "position" | "level">[];
  /** Ids of the checks owed before it is sold as rideable. */
  readonly owed: readonly string[];
}

export const NOTHING_SEEN: Seen = { observations: {}, findings: [], owed: [] };

/**
 * The checks that apply to a bike, by the wheel's groups, to be filled in by hand; what was seen already is ticked.
 * @param described as far as it is; what is left out is settled by the catalogue's defaults
 * @param lengths how lengths are written down
 */
export function inspectionSheet(
  known: Pick<Reference, "checks" | "attributeDefaults">,
  described: Described,
  seen: Seen,
  lengths: LengthUnit,
): readonly CheckGroup[] {
  const attributes = settled(described, known.attributeDefaults);
  const checks = applicable(known.checks, attributes);
  const names = [...new Set(known.checks.map(({ spoke }) => spoke))];
  return names.flatMap((name) => {
    const rows = checks
      .filter(({ spoke }) => spoke === name)
      .map((check) => rowOf(check, attributes, seen, lengths));
    return rows.length === 0 ? [] : [{ name: capital(name), rows }];
  });
}

/** Tools to have at hand for the checks of a sheet, each once. */
export function toolsFor(known: Pick<Reference, "checks">, groups: readonly CheckGroup[]): readonly string[] {
  const ids = new Set(groups.flatMap(({ rows }) => rows.map(({ id }) => id)));
  return [...new Set(known.checks.filter(({ id }) => ids.has(id)).flatMap(({ tools }) => tools))];
}

function rowOf(check: Check, attributes: Described, seen: Seen, wished: LengthUnit): CheckRow {
  const { id, name, how, minutes, perWheel, priority, measurement } = check;
  const lengths = lengthsFor(check, wished);
  const wheels: readonly Wheel[] = perWheel ? ["front", "rear"] : ["bike"];
  const observation = seen.observations[id];
  const reading = (wheel: Wheel) => readingAt(observation, wheel);
  const ticked = (level: string) =>
    wheels.filter((wheel) =>
      seen.findings.some(
        (one) =>
          one.check === id && one.level === level && (one.position === wheel || !isOneWheel(one.position)),
      ),
    );
  const flags = measurement?.flags ?? [];
  const stops = (level: string | undefined) =>
    check.levels.some((one) => one.id === level && safetyOf(check, one, attributes) === "block");
  return {
    id,
    name,
    how: withLengths(how, lengths),
    minutes,
    wheels,
    levels: [
      ...check.levels.map((level) => ({
        id: level.id,
        words: withLengths(levelText(check, level), lengths),
        ticked: ticked(level.id),
        stops: stops(level.id),
      })),
      ...flags.map((flag) => ({
        id: flag.id,
        words: capital(flag.label),
        ticked: wheels.filter((wheel) => reading(wheel)?.flags?.includes(flag.id) === true),
        stops: stops(flag.setsLevel) || stops(flag.raisesTo),
      })),
    ],
    blanks: (measurement?.inputs ?? []).map((input) => ({
      id: input.id,
      label: capital(input.label) + (input.optional ? " (if it is easy)" : ""),
      unit: input.unit === "count" ? "" : input.unit === "mm" ? lengths : input.unit,
      filled: Object.fromEntries(
        wheels.flatMap((wheel) => {
          const value = reading(wheel)?.measured?.[input.id];
          if (value === undefined) return [];
          return [[wheel, input.unit === "mm" ? bareLength(value, lengths) : figure(value, 2)]];
        }),
      ),
    })),
    first: priority === "triage",
    made: madeOn(check, seen),
    owed: seen.owed.includes(id),
  };
}

/** "Deep: 1 to 3 mm deep, no fold"; the label alone where the description says no more. */
function levelText(check: Check, { id, description }: Check["levels"][number]): string {
  const label = levelWords(check, id);
  return label.toLowerCase() === description.toLowerCase() ? label : `${label}: ${uncapital(description)}`;
}

const isOneWheel = (position: string) => position === "front" || position === "rear";

/** What was read at a wheel; a reading of the whole bike holds for both. */
function readingAt(observation: Observation | undefined, wheel: Wheel): Reading | undefined {
  if (observation === undefined) return undefined;
  if (!isPerWheel(observation)) return observation;
  return wheel === "bike" ? undefined : observation[wheel];
}
