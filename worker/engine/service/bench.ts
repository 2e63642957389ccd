import type { Attributes } from "../bicycle.ts";
import type { FindingsByCheck } from "../inspection/finding.ts";
import { findingAt } from "../inspection/findingsByCheck.ts";
import type { Minutes, Money } from "../quantity.ts";
import type { Fault } from "./fault.ts";
import type { LevelMatch, OperationId } from "./operation.ts";
import type { PartId } from "./part.ts";
import type { ServiceIndex } from "./serviceIndex.ts";
import type { Stock } from "./stock.ts";
import type { StopRule } from "./stopLimit.ts";
import type { Workshop } from "./workshop.ts";

/** One bike on the stand: what it is and what is wrong with it. */
export interface Patient {
  readonly index: ServiceIndex;
  readonly attributes: Attributes;
  /** Parts that are not there and must be bought before the bike is whole. */
  readonly missingParts: readonly PartId[];
  /** Found and assumed faults; faultless findings do not stand here. */
  readonly faults: readonly Fault[];
  /** All that was found, faultless too. */
  readonly found: FindingsByCheck;
}

/** One bike on the stand, and who works on it with what. */
export interface Bench extends Patient {
  readonly rearSprockets: number | undefined;
  readonly workshop: Workshop;
  /** Finished and held: it takes nothing more and cannot fail. */
  readonly done: ReadonlySet<OperationId>;
  /** Parts at hand. */
  readonly stock: Stock;
  readonly huntMinutesPerMissingPart: Minutes;
  /** Worth of the bike made rideable over that of its parts without the frame: what a lost frame costs, at least 0. */
  readonly frameAtStake: Money;
  readonly stopRule: StopRule;
  /** To list, pack and post the pieces that are sold where it is broken for parts. */
  readonly partsSellingMinutes: Minutes;
}

/** Every fault at one of the levels: front and rear may both stand. */
export function faultsAt(bench: Patient, match: LevelMatch): readonly Fault[] {
  return bench.faults.filter(
    ({ check, level }) => check.id === match.check && match.levels.includes(level.id),
  );
}

/** The fault at one of the levels, if it stands. */
export function faultAt(bench: Patient, match: LevelMatch): Fault | undefined {
  return bench.faults.find(({ check, level }) => check.id === match.check && match.levels.includes(level.id));
}

/** Whether a check stands at one of the levels, faultless ones included. */
export function stands(bench: Patient, match: LevelMatch): boolean {
  return findingAt(bench.found, match) !== undefined || faultAt(bench, match) !== undefined;
}
