import type { AttributeDefault, Condition } from "../bicycle.ts";
import type { Acquittal, Check, CheckId, LevelId } from "./check.ts";
import type { HistoryIndex } from "./history/historyIndex.ts";
import type { TyreName } from "./tyreName.ts";

/** A check with its levels numbered from best (0) to worst. */
export interface RankedCheck {
  readonly check: Check;
  readonly ranks: ReadonlyMap<LevelId, number>;
  /** The levels' descriptions as sentences. */
  readonly sentences: readonly string[];
}

/** A prior modifier with its level numbered. */
export interface RankedModifier {
  readonly fromRank: number;
  readonly when: readonly Condition[];
  readonly odds: number;
}

/** The inspection tables, ordered for look-up. Compiled once from the tables and passed in; nothing is kept between requests. */
export interface InspectionIndex {
  /** In the order of the table. */
  readonly checks: readonly RankedCheck[];
  readonly byId: ReadonlyMap<CheckId, RankedCheck>;
  readonly modifiers: ReadonlyMap<CheckId, readonly RankedModifier[]>;
  /** Acquittals by the check that is cleared. */
  readonly acquittals: ReadonlyMap<CheckId, readonly Acquittal[]>;
  readonly attributeDefaults: readonly AttributeDefault[];
  readonly tyreNames: readonly TyreName[];
  /** The hidden history, and with it the priors. */
  readonly history: HistoryIndex;
  /** The check whose measurement is a bead seat diameter; a tyre's marking answers it. */
  readonly beadSeatCheck: RankedCheck | null;
}

/** Era and keeping as one key. */
export function priorKey(era: string, kept: string): string {
  return `${era}|${kept}`;
}
