import type { Attributes } from "../bicycle.ts";
import { DomainError } from "../domainError.ts";
import type { Flag, LevelId } from "./check.ts";
import type { RankedCheck } from "./inspectionIndex.ts";
import { type MeasuredLevel, measure } from "./measurement.ts";
import type { Reading } from "./observation.ts";

/** The level that one reading comes to, and where it came from. */
export interface SettledReading {
  readonly rank: number;
  /** The measurement, where there is one, even where a flag outweighs it. */
  readonly measured: MeasuredLevel | null;
  /** True where the level is the measurement's own. */
  readonly byMeasurement: boolean;
}

/**
 * One reading's level: the measurement wins over the judged level, and flags over both. On ordered levels a flag only makes
 * worse; among kinds it names the kind.
 * @throws DomainError `unknown-id`, `impossible-measurement` or `out-of-domain`, with a pointer relative to the reading
 */
export function settledReading(
  ranked: RankedCheck,
  reading: Reading,
  attributes: Attributes,
): SettledReading {
  const judged = reading.level === undefined ? null : levelRank(ranked, reading.level);
  const measured =
    reading.measured === undefined ? null : measuredLevel(ranked, reading.measured, attributes);
  const flags = (reading.flags ?? []).map((id, i) => flagOf(ranked, id, i));
  if (judged === null && measured === null && flags.length === 0) {
    throw new DomainError("out-of-domain", ranked.check.id, "nothing", `a level${waysIn(ranked)}`, "");
  }
  const unflagged = measured === null ? (judged ?? 0) : ranked.ranks.get(measured.level)!;
  const rank = flags.reduce((worst, flag) => flagged(ranked, worst, flag), unflagged);
  return { rank, measured, byMeasurement: measured !== null && rank === unflagged };
}

function flagged({ check, ranks }: RankedCheck, rank: number, { setsLevel, raisesTo }: Flag): number {
  const set = setsLevel === undefined ? rank : ranks.get(setsLevel)!;
  const settled = check.ordered ? Math.max(rank, set) : set;
  return raisesTo === undefined ? settled : Math.max(settled, ranks.get(raisesTo)!);
}

function measuredLevel(
  { check, ranks }: RankedCheck,
  measured: Readonly<Record<string, number>>,
  attributes: Attributes,
): MeasuredLevel {
  if (check.measurement === null) {
    const levels = [...ranks.keys()].join(", ");
    throw new DomainError(
      "out-of-domain",
      "measured",
      check.id,
      `a check that is measured; judge this one: ${levels}`,
      "measured",
    );
  }
  return measure(check.measurement, measured, attributes, (level) => ranks.get(level)!);
}

function levelRank({ ranks }: RankedCheck, level: LevelId): number {
  const rank = ranks.get(level);
  if (rank === undefined) {
    throw new DomainError("unknown-id", "level", level, `one of ${[...ranks.keys()].join(", ")}`, "level");
  }
  return rank;
}

function flagOf({ check }: RankedCheck, id: string, index: number): Flag {
  const known = check.measurement?.flags ?? [];
  const flag = known.find((one) => one.id === id);
  if (flag === undefined) {
    const allowed =
      known.length === 0 ? "a check that has flags" : `one of ${known.map((one) => one.id).join(", ")}`;
    throw new DomainError("unknown-id", "flags", id, allowed, `flags/${index}`);
  }
  return flag;
}

function waysIn({ check }: RankedCheck): string {
  if (check.measurement === null) return "";
  return check.measurement.flags.length === 0 ? " or measured values" : ", measured values or flags";
}
