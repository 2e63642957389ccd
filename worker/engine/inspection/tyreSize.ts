import type { Attributes } from "../bicycle.ts";
import { DomainError } from "../domainError.ts";
import type { Dimensions } from "./find.ts";
import type { Finding, Inspection, Mismatch } from "./finding.ts";
import type { InspectionIndex, RankedCheck } from "./inspectionIndex.ts";
import { type MarkedTyre, markedTyre } from "./markedTyre.ts";
import { readingFinding } from "./readingFinding.ts";
import { readTyreMarking, type TyreReading } from "./tyreMarking.ts";
import { mismatch, type StatedDiameter, sharedNominals } from "./tyreMismatch.ts";

/** What the description's rim diameter and tyre marking add to the findings. */
export interface TyreSizeOutcome {
  /** Answers the tyre-size check where no observation did. */
  readonly finding: Finding | null;
  readonly mismatches: readonly Mismatch[];
  /** The marking taken apart; null where there is none. */
  readonly tyre: MarkedTyre | null;
  /** Why a marking was of no use, where it was not. */
  readonly ignored: Inspection["ignored"];
}

/** A tubular has no bead; the check's measurement writes 0. */
const TUBULAR = 0;

/**
 * Reads the find's bead seat diameter and tyre marking, and compares them with each other and with what was measured.
 * The rim's own diameter counts before the marking.
 * @param observed findings of the tyre-size check
 * @throws DomainError `out-of-domain` at /find/tyreMarking for what is no marking at all;
 * `impossible-measurement` at /find/beadSeatDiameterMm for a diameter that no rim has
 */
export function tyreSize(
  dimensions: Dimensions,
  observed: readonly Finding[],
  attributes: Attributes,
  index: InspectionIndex,
): TyreSizeOutcome {
  const ranked = index.beadSeatCheck;
  const { beadSeatDiameterMm: rim, tyreMarking: marking } = dimensions;
  if (ranked === null || (rim === undefined && marking === undefined)) return NOTHING;
  const read = marking === undefined ? null : readTyreMarking(marking, index.tyreNames);
  if (read?.kind === "unreadable") {
    const requirement = `a marking of a tyre or rim (${read.reason}): ${read.remedy}`;
    throw new DomainError("out-of-domain", "tyreMarking", marking, requirement, "/find/tyreMarking");
  }
  const stated = statedDiameters(rim, marking, read, observed);
  const diameter = rim ?? markedDiameter(read);
  return {
    finding: observed.length > 0 || diameter === null ? null : sized(ranked, diameter, attributes),
    mismatches: mismatches(stated, index),
    tyre: marking === undefined ? null : markedTyre(marking, index.tyreNames),
    ignored: diameter === null ? [{ check: ranked.check.id, reason: whyNot(marking!, read) }] : [],
  };
}

const NOTHING: TyreSizeOutcome = { finding: null, mismatches: [], tyre: null, ignored: [] };

function markedDiameter(read: TyreReading | null): number | null {
  if (read?.kind === "tubular") return TUBULAR;
  return read?.kind === "one" ? read.diameterMm : null;
}

function sized(ranked: RankedCheck, diameter: number, attributes: Attributes): Finding {
  const { derivation } = ranked.check.measurement!;
  if (derivation.kind !== "bead-seat")
    throw new DomainError("inconsistent-table", ranked.check.id, derivation.kind, "bead-seat");
  try {
    const position = ranked.check.perWheel ? "both" : "bike";
    return readingFinding(ranked, { measured: { [derivation.of]: diameter } }, position, attributes);
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const { code, value, requirement } = error;
    throw new DomainError(code, "beadSeatDiameterMm", value, requirement, "/find/beadSeatDiameterMm");
  }
}

/** Every diameter that was stated, with what stated it. A marking with several diameters in question counts only where none of them is the rim's. */
function statedDiameters(
  rim: number | undefined,
  marking: string | undefined,
  read: TyreReading | null,
  observed: readonly Finding[],
): StatedDiameter[] {
  const stated: StatedDiameter[] = [];
  if (rim !== undefined) stated.push({ what: "the rim", diameterMm: rim });
  const what = `the tyre marked ${marking}`;
  if (read?.kind === "one") stated.push({ what, diameterMm: read.diameterMm });
  if (
    read?.kind === "several" &&
    rim !== undefined &&
    read.candidates.every((one) => one.diameterMm !== rim)
  ) {
    stated.push({
      what,
      diameterMm: nearest(
        read.candidates.map((one) => one.diameterMm),
        rim,
      ),
    });
  }
  for (const { derived, position } of observed) {
    const where =
      position === "front" || position === "rear" ? `the ${position} wheel` : "the wheel as measured";
    if (derived !== undefined && derived.value !== TUBULAR)
      stated.push({ what: where, diameterMm: derived.value });
  }
  return stated;
}

function nearest(diameters: readonly number[], to: number): number {
  return diameters.reduce((best, one) => (Math.abs(one - to) < Math.abs(best - to) ? one : best));
}

/** Front and rear may differ by design; they are told apart only where they share a name. */
function mismatches(stated: readonly StatedDiameter[], { tyreNames }: InspectionIndex): Mismatch[] {
  return stated.flatMap((a, i) =>
    stated.slice(i + 1).flatMap((b) => {
      const byDesign =
        isWheel(a) && isWheel(b) && sharedNominals(a.diameterMm, b.diameterMm, tyreNames).length === 0;
      const found = byDesign ? null : mismatch(a, b, tyreNames);
      return found === null ? [] : [found];
    }),
  );
}

function isWheel({ what }: StatedDiameter): boolean {
  return what === "the front wheel" || what === "the rear wheel";
}

function whyNot(marking: string, read: TyreReading | null): string {
  if (read?.kind === "several") return `The marking ${marking} does not settle the size. ${read.remedy}.`;
  const { reason, remedy } = read as TyreReading & { kind: "unlisted" };
  return `The marking ${marking} does not settle the size: ${reason}; ${remedy}.`;
}
