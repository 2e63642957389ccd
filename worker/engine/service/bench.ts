import type { Attributes } from "../bicycle.ts";
import type { FindingsByCheck } from "../inspection/finding.ts";
import { findingAt } from "../inspection/findingsByCheck.ts";
import type { Minutes } from "../quantity.ts";
import type { Fault } from "./fault.ts";
import type { LevelMatch } from "./operation.ts";
import type { PartId } from "./part.ts";
import type { ServiceIndex } from "./serviceIndex.ts";
import type { Workshop } from "./workshop.ts";

/** One bike on the stand: what it is, what is wrong with it, and who works on it. */
export interface Bench {
  readonly index: ServiceIndex;
  readonly attributes: Attributes;
  readonly rearSprockets: number | undefined;
  readonly workshop: Workshop;
  /** Parts that are not there and must be bought before the bike is whole. */
  readonly missingParts: readonly PartId[];
  readonly huntMinutesPerMissingPart: Minutes;
  /** To list, pack and post the pieces that are sold where it is broken for parts. */
  readonly partsSellingMinutes: Minutes;
  /** Found and assumed faults; faultless findings do not stand here. */
  readonly faults: readonly Fault[];
  /** All that was found, faultless too. */
  readonly found: FindingsByCheck;
}

/** Every fault at one of the levels: front and rear may both stand. */
export function faultsAt(bench: Bench, match: LevelMatch): readonly Fault[] {
  return bench.faults.filter(
    ({ check, level }) => check.id === match.check && match.levels.includes(level.id),
  );
}

/** The fault at one of the levels, if it stands. */
export function faultAt(bench: Bench, match: LevelMatch): Fault | undefined {
  return bench.faults.find(({ check, level }) => check.id === match.check && match.levels.includes(level.id));
}

/** Whether a check stands at one of the levels, faultless ones included. */
export function stands(bench: Bench, match: LevelMatch): boolean {
  return findingAt(bench.found, match) !== undefined || faultAt(bench, match) !== undefined;
}
