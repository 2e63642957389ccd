import type { Check } from "../../../worker/engine/inspection/check.ts";
import type { Position } from "../../../worker/engine/inspection/finding.ts";
import type { LevelMatch } from "../../../worker/engine/service/operation.ts";
import type { Given } from "./given.ts";
import type { Past } from "./past.ts";

/** A fault seen, or not seen and likelier than not. */
export interface StandingFault {
  readonly check: Check;
  readonly level: string;
  readonly rank: number;
  readonly position: Position;
  /** Of visible condition, while it is left. */
  readonly penalty: number;
  readonly assumed: boolean;
}

/** What is known of the bike when its work is planned. */
export class Bike {
  readonly faults: readonly StandingFault[];
  readonly #given: Given;

  constructor(given: Given, { hidden }: Past) {
    this.#given = given;
    const found = given.seen
      .filter(({ rank }) => rank > 0)
      .map(({ check: id, rank, position }) => {
        const check = given.tables.inspection.checks.find((one) => one.id === id)!;
        return standing(check, rank, position, false);
      });
    const share = given.tables.defaults.assumedAbove;
    const assumed = hidden.flatMap(({ check, wheel, overall }) => {
      const likely = overall.flatMap((chance, rank) => {
        const reached = check.ordered ? overall.slice(rank).reduce((sum, one) => sum + one, 0) : chance;
        return rank > 0 && reached > share ? [rank] : [];
      });
      const rank = check.ordered ? likely.at(-1) : likely[0];
      return rank === undefined
        ? []
        : [standing(check, rank, wheel ?? (check.perWheel ? "both" : "bike"), true)];
    });
    this.faults = [...found, ...assumed];
  }

  /** Whether a fault, or a faultless level seen, is one of the match's. */
  stands(match: LevelMatch): boolean {
    return (
      this.hasFault(match) ||
      this.#given.seen.some(({ check, level }) => check === match.check && match.levels.includes(level))
    );
  }

  hasFault({ check, levels }: LevelMatch): boolean {
    return this.faults.some((fault) => fault.check.id === check && levels.includes(fault.level));
  }
}

function standing(check: Check, rank: number, position: Position, assumed: boolean): StandingFault {
  const { id: level, conditionPenalty } = check.levels[rank]!;
  const oneWheel = position === "front" || position === "rear";
  return { check, level, rank, position, penalty: conditionPenalty * (oneWheel ? 0.5 : 1), assumed };
}
