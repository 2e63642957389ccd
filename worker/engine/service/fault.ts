import type { Check, Level, Safety } from "../inspection/check.ts";
import type { Position } from "../inspection/finding.ts";
import { levelNeeded } from "../inspection/neededLevel.ts";
import type { Probability } from "../quantity.ts";

/**
 * required: the fault blocks riding or sale as rideable; needed: it is to be cured or told to the buyer, or makes the bike too bad
 * to use; optional: presentation, comfort, cheap wear.
 */
export type Need = "required" | "needed" | "optional";

/** A fault to plan for: found, or unseen but likelier than not. */
export interface Fault {
  readonly check: Check;
  readonly position: Position;
  readonly level: Level;
  readonly rank: number;
  readonly safety: Safety;
  readonly need: Need;
  /** Share of visible condition that it costs while it remains; half the level's where only one wheel has it. */
  readonly penalty: Probability;
  /** Cheaper told to the buyer than cured: only where the need comes from an advisory. */
  readonly mayDisclose: boolean;
  /** Not seen, only likely. */
  readonly assumed: boolean;
}

/** Rank of a need, for taking the stronger of two. */
const STRENGTH: Readonly<Record<Need, number>> = { optional: 0, needed: 1, required: 2 };

export function strongerNeed(a: Need, b: Need): Need {
  return STRENGTH[a] >= STRENGTH[b] ? a : b;
}

/** Severity from which a functional fault makes the bike too bad to use. Domain convention: 2 on the catalogue's 0 to 4. */
const TOO_BAD_TO_USE = 2;
/** Severity at which the part is finished: telling the buyer does not make the bike one to ride. */
const FINISHED = 4;

/**
 * What a level calls for on this bike.
 * Block: required. Functional and severity 2 or more: needed, whatever is told. Advisory: needed, may be disclosed. A chain: from the level set for its
 * count of sprockets at the back. Anything else: optional.
 * @param rearSprockets count of sprockets at the back, undefined where unknown
 */
export function needOf(check: Check, rank: number, safety: Safety, rearSprockets: number | undefined): Call {
  const level = check.levels[rank]!;
  if (safety === "block") return REQUIRED;
  const neededFrom = levelNeeded(check, rearSprockets);
  if (neededFrom !== null) {
    return rank >= check.levels.findIndex(({ id }) => id === neededFrom) ? NEEDED : OPTIONAL;
  }
  if (check.functional && level.severity >= TOO_BAD_TO_USE) return NEEDED;
  if (safety === "advisory") return level.severity < FINISHED ? DISCLOSABLE : NEEDED;
  return OPTIONAL;
}

/** What a level calls for. */
type Call = Pick<Fault, "need" | "mayDisclose">;

const REQUIRED: Call = { need: "required", mayDisclose: false };
const NEEDED: Call = { need: "needed", mayDisclose: false };
const DISCLOSABLE: Call = { need: "needed", mayDisclose: true };
const OPTIONAL: Call = { need: "optional", mayDisclose: false };

/**
 * Whether a fault that may be left would be needed at a worse level of its check: worn tape that will be missing, a stiff post that will be stuck. Making
 * safe cures it now where that pays; otherwise a worse finding, which has to be cured, could leave more.
 */
export function growsNeeded({ check, rank, need }: Fault, rearSprockets: number | undefined): boolean {
  if (need !== "optional" || !check.ordered) return false;
  return check.levels.some(
    ({ terminal, safety }, worse) =>
      worse > rank && terminal === null && needOf(check, worse, safety, rearSprockets).need !== "optional",
  );
}
