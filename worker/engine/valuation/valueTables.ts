import type { AttributeName, Attributes, Condition, Era, Tier } from "../bicycle.ts";
import type { Minutes, Probability } from "../quantity.ts";
import type { DemoDriver } from "./driver.ts";
import type { Papers, Presentation, SaleState } from "./saleDescription.ts";

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

/** The regression on the demo sales, fitted at build time: the mean and root information of what is believed before any own sale. */
export interface FittedModel {
  readonly design: ValueDesign;
  readonly columns: readonly FittedColumn[];
  /**
   * Upper triangle R, row by row, row i from its diagonal on, R'R being the prior information in units of the spread within a model: the demo sales
   * at the weight of a few, and how little drivers are held to differ between markets. Kept to seven digits: it serves spreads and weights alone.
   */
  readonly squareRootInformation: readonly number[];
  /** Residual standard deviation of log price for a bike of ordinary spread. */
  readonly residualSd: number;
  readonly degreesOfFreedom: number;
  /** Largest leverage of a demo sale under that information: above it the bike lies outside the data. */
  readonly largestLeverage: number;
  readonly rows: number;
}

type Shares<Level extends string> = Readonly<Record<Level, Probability>>;

/** How the used bicycles on a market divide: what an unknown attribute of a comparable is averaged over. Invented demo figures. */
export interface MarketShares {
  readonly category: Readonly<Record<string, Probability>>;
  readonly componentTier: Shares<Tier>;
  readonly era: Shares<Era>;
  readonly frameMaterial: Readonly<Record<Era, Shares<Attributes["frameMaterial"]>>>;
  readonly sizeClass: Shares<Attributes["sizeClass"]>;
  readonly place: Shares<Attributes["place"]>;
  readonly stepThrough: Shares<Attributes["stepThrough"]>;
  readonly drivetrain: Shares<Attributes["drivetrain"]>;
  readonly state: Shares<SaleState["kind"]>;
  /** Of bikes that ride, at the four knots of condition. */
  readonly condition: readonly [Probability, Probability, Probability, Probability];
  /** At the four knots of originality. */
  readonly originality: readonly [Probability, Probability, Probability, Probability];
  readonly desirability: readonly { readonly value: Probability; readonly share: Probability }[];
  readonly presentation: Shares<Presentation>;
  readonly papers: Shares<Papers>;
}

/** How the value model learns: what the demo sales count for beside sales of one's own. Standard deviations are of log price. */
export interface ValuePrior {
  /** Sales that all demo sales together count as. */
  readonly demoSalesCount: number;
  /** After so many days a comparable counts for half. */
  readonly halfLifeDays: number;
  /** Variance between models of the same description, over the variance within a model. */
  readonly betweenModels: number;
  /** Multiple of its own standard deviation from which a comparable is called surprising. */
  readonly surprising: number;
  /** Asking prices over going rates: expected factor, and how uncertain its log is. */
  readonly asked: { readonly factor: number; readonly sd: number };
  /** How far the level of one's own market may lie from that of the demo sales. */
  readonly marketSd: number;
  /** How far, beyond that, that of one category may. */
  readonly marketOfCategorySd: number;
  /** How far a driver's effect may differ from that among the demo sales. */
  readonly driverSd: Readonly<Record<DemoDriver, number>>;
  readonly shares: MarketShares;
}

export interface ValueTables {
  readonly model: FittedModel;
  readonly prior: ValuePrior;
  readonly parts: PartsValueTable;
  /** Condition not polished: share of visible condition. */
  readonly notPolishedPenalty: number;
}
