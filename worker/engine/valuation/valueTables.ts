import type { AttributeName, Attributes, Condition, Tier } from "../bicycle.ts";
import type { Minutes, Probability } from "../quantity.ts";

/** A piece of a bike that sells by itself, in the kind that some bikes have. Invented demo figures. */
export interface PieceKind {
  readonly name: string;
  readonly onlyIf: readonly Condition[];
  /** Parts of the catalogue that make it up: where all of them are missing, so is the piece. */
  readonly parts: readonly string[];
  /** Share of the worth of all parts of a plain bike, frame included. */
  readonly share: Readonly<Record<Tier, Probability>>;
  /** Chance that it sells, against the other pieces. */
  readonly sells: Readonly<Record<Tier, Probability>>;
  /** To list, pack and post it. */
  readonly minutes: Minutes;
}

export interface PieceRow {
  readonly id: string;
  /** The first kind that fits the bike is the one it has; where none fits it has no such piece. */
  readonly kinds: readonly PieceKind[];
}

/** Levels of a check. */
export interface PieceLevels {
  readonly check: string;
  readonly levels: readonly string[];
}

export interface PieceTable {
  /** Most pieces that are listed. */
  readonly most: number;
  /** The bike whose shares sum to 1; others have theirs scaled to the same sum. */
  readonly plain: Readonly<Partial<Record<AttributeName, string>>>;
  /** Its share is what the haircut of a frame that cannot be sold takes away. */
  readonly frame: Pick<PieceKind, "name" | "sells" | "minutes">;
  readonly others: readonly PieceRow[];
  /** Signs of a crash, and the pieces that nobody sells after one. */
  readonly crash: { readonly signs: readonly PieceLevels[]; readonly exposed: readonly string[] };
}

/** What a whole bike's parts fetch, as shares of the ready value. Invented demo figures. */
export interface PartsValueTable {
  readonly grossShare: Readonly<Record<Tier, number>>;
  readonly frameUnsaleable: Readonly<Record<Tier, number>>;
  readonly category: Readonly<Record<string, number>>;
  readonly soldShare: Probability;
  /** What is left of the takings after fee and post. */
  readonly netShare: Probability;
  /** Least share of the parts' worth that is left, however much is missing or spoiled. */
  readonly leastShare: Probability;
  /** Share of the worth of all parts that a bad finding takes from a piece. */
  readonly spoiled: readonly (PieceLevels & { readonly piece: string; readonly share: Probability })[];
  readonly pieces: PieceTable;
}

/** A class of bikes: an empty list takes all; a bike belongs where every list takes it. */
export interface BikeClass {
  readonly tiers: readonly string[];
  readonly categories: readonly string[];
  readonly materials: readonly string[];
  readonly eras: readonly string[];
}

/** Where full restoration earns its premium: upper and top tiers and some steel classes; elsewhere only a share of it. */
export interface RestorationInterest {
  readonly full: readonly BikeClass[];
  readonly otherwise: Probability;
}

/** A yes/no term of the regression: holds for the bikes of a class that meet what else is asked. */
export interface ValueTerm extends BikeClass {
  readonly name: string;
  readonly drivetrains: readonly Attributes["drivetrain"][];
  readonly stepThrough: readonly Attributes["stepThrough"][];
  /** Least originality, 0 to 1; 0 asks nothing. */
  readonly originalityFrom: number;
}

/** How a bike becomes a row of the regression: everything but the coefficients. The fit and the prediction share it. */
export interface ValueDesign {
  /** Categories with era columns of their own; all others share the group "other". */
  readonly eraGroups: readonly string[];
  /** The plain bike against which every factor is told; its columns are left out. */
  readonly reference: { readonly category: string; readonly tier: Tier };
  readonly material: readonly ValueTerm[];
  readonly fashion: readonly ValueTerm[];
  /** Visible condition c at: rides but needs work, sound but tired, ready, fully restored. */
  readonly conditionKnots: readonly [number, number, number, number];
  /** Originality at: changed in kind, mixed periods, sensible replacements (the reference), all original. */
  readonly originalityKnots: readonly [number, number, number, number];
  /** Limits of the product of presentation, papers, season and place, which overlap. */
  readonly circumstanceLimits: readonly [number, number];
  readonly interest: RestorationInterest;
  readonly collectable: {
    /** Bikes whose price scatters more. */
    readonly any: readonly ValueTerm[];
    /** Their residual spread as a multiple of the ordinary one. */
    readonly spread: number;
  };
}

/** A named column of the regression with its fitted coefficient on the log of price. */
export interface FittedColumn {
  readonly name: string;
  readonly coefficient: number;
}

/** The regression on the demo sales, fitted at build time. */
export interface FittedModel {
  readonly design: ValueDesign;
  readonly columns: readonly FittedColumn[];
  /**
   * Upper triangle R of the QR factor of the (weighted) design, row by row, row i from its diagonal on:
   * the square root of the information matrix. Kept to seven digits: it serves standard errors alone.
   */
  readonly squareRootInformation: readonly number[];
  /** Residual standard deviation of log price for a bike of ordinary spread. */
  readonly residualSd: number;
  readonly degreesOfFreedom: number;
  /** Largest leverage of a training row: above it the bike lies outside the data. */
  readonly largestLeverage: number;
  readonly rows: number;
}

export interface ValueTables {
  readonly model: FittedModel;
  readonly parts: PartsValueTable;
  /** Condition not polished: share of visible condition. */
  readonly notPolishedPenalty: number;
}
