import type { Condition } from "../bicycle.ts";

export type CheckId = string;
export type LevelId = string;

/** block: not ridden or sold as rideable until cured; advisory: cure or tell the buyer; owed: a step still to be taken, no fault. */
export type Safety = "none" | "advisory" | "block" | "owed";
export type Severity = 0 | 1 | 2 | 3 | 4;

export interface Level {
  readonly id: LevelId;
  /** Words to press where the id alone would mislead: a plain sign of a crash is not "clear". */
  readonly label?: string;
  readonly severity: Severity;
  readonly safety: Safety;
  readonly description: string;
  /** Share of visible condition (0 to 1) that the fault costs while it remains. 0 for what is inside the bike or on paper. */
  readonly conditionPenalty: number;
  /** What the level means for the whole job where it ends it; see the catalogue's terminal levels. */
  readonly terminal: "parts-or-recycle" | "recycle" | "decide-first" | "stop" | null;
  readonly terminalReason?: string;
  readonly note?: string;
}

/** A change of a level's safety on some bikes: a close dropout on aluminium may not be sprung in. */
export interface LevelAdjustment {
  readonly level: LevelId;
  readonly when: readonly Condition[];
  readonly safety: Safety;
  readonly note: string;
}

export interface MeasuredInput {
  readonly id: string;
  readonly label: string;
  readonly unit: "mm" | "count" | "years";
  /** Physically possible range; outside it the value is refused. */
  readonly min: number;
  readonly max: number;
  readonly optional: boolean;
}

/** The level whose from <= value < below; null is an open end. */
export interface Threshold {
  readonly level: LevelId;
  readonly from: number | null;
  readonly below: number | null;
}

/** A mark that the inspector may set beside a measurement. It wins over both measurement and judged level. */
export interface Flag {
  readonly id: string;
  readonly label: string;
  readonly setsLevel?: LevelId;
  readonly raisesTo?: LevelId;
}

/** How a measured check's inputs become the quantity that is held against the thresholds. */
export type Derivation =
  | { readonly kind: "string-test"; readonly defaultRatio: number }
  | {
      readonly kind: "elongation";
      readonly pitches: number;
      readonly pitch: number;
      readonly shortestAllowedPercent: number;
    }
  | { readonly kind: "absolute-difference"; readonly of: readonly [string, string] }
  | { readonly kind: "surplus"; readonly of: readonly [string, string] }
  | { readonly kind: "value"; readonly of: string }
  | {
      readonly kind: "bead-seat";
      readonly of: string;
      readonly supply: Readonly<Record<LevelId, readonly number[]>>;
      readonly unknownLevel: LevelId;
    };

export interface Measurement {
  readonly unit: string;
  readonly inputs: readonly MeasuredInput[];
  readonly derivation: Derivation;
  readonly thresholds: readonly Threshold[];
  /** Other thresholds on some bikes (disc pads are thinner than rim pads): the first that holds. */
  readonly thresholdsWhen: readonly {
    readonly when: readonly Condition[];
    readonly thresholds: readonly Threshold[];
  }[];
  readonly flags: readonly Flag[];
  /** One reading error, in the unit of the derived quantity. */
  readonly readingError: number;
}

export interface LimitSource {
  readonly text: string;
  readonly kind: "standard" | "law" | "common practice";
  readonly fromMemory: boolean;
}

export interface Check {
  readonly id: CheckId;
  readonly name: string;
  /** One of the catalogue's seven groups. */
  readonly group: string;
  /** One of the wheel's twelve groups (for the screen). */
  readonly spoke: string;
  readonly where: "spot" | "bench" | "dismantled";
  readonly priority: "triage" | "core" | "extra";
  readonly minutes: number;
  readonly tools: readonly string[];
  readonly how: string;
  readonly appliesTo: readonly Condition[];
  /** May be observed front and rear apart. */
  readonly perWheel: boolean;
  /** Levels are ordered from best to worst; false where they are kinds, not degrees. */
  readonly ordered: boolean;
  /** A fault of severity 2 and more makes the bike too bad to use: shifting, bearings, teeth. Not finish or coverings. */
  readonly functional: boolean;
  readonly levels: readonly Level[];
  readonly adjustments: readonly LevelAdjustment[];
  readonly measurement: Measurement | null;
  /** Least level at which the cure is needed, by count of sprockets at the back, both bounds counted in (chain only); `unknown` marks the row that also holds without a count. */
  readonly neededFrom: readonly {
    readonly sprocketsFrom: number;
    readonly sprocketsTo: number;
    readonly unknown: boolean;
    readonly level: LevelId;
  }[];
  /** What an unanswered check does to a sale as rideable; block means owed. */
  readonly ifNotChecked: "block" | "advisory" | "none";
  readonly limitSource: LimitSource;
  readonly note?: string;
}

/** Chances of each level where nobody has looked, by era and how the bike was kept, in the order of the check's levels. */
export interface Prior {
  readonly check: CheckId;
  readonly era: string;
  readonly kept: string;
  readonly probabilities: readonly number[];
}

/** Multiplies the odds of `fromLevel` or worse on the bikes where the conditions hold. */
export interface PriorModifier {
  readonly check: CheckId;
  readonly fromLevel: LevelId;
  readonly when: readonly Condition[];
  readonly odds: number;
}

/**
 * What clears checks that nobody looked at: a good finding (strong brakes acquit their pads and cables) or, where check and
 * level are null, the description alone (a wheel that sits in its frame acquits the spacing).
 */
export interface Acquittal {
  readonly check: CheckId | null;
  readonly level: LevelId | null;
  readonly acquits: readonly CheckId[];
  readonly when: readonly Condition[];
}
