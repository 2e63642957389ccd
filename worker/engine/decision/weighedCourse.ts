import type { Minutes, Money, Probability } from "../quantity.ts";
import type { CourseId } from "../service/operation.ts";
import type { Resource } from "../service/resource.ts";
import type { Uncertainty } from "../service/uncertainty.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import type { Branch, Sale } from "./branch.ts";
import type { Change } from "./changeOfCourse.ts";
import type { ClassSums } from "./classSums.ts";
import type { Work } from "./courseBranch.ts";
import type { DiscoveryStakes, Leaf } from "./discovery.ts";
import type { Expectation } from "./expectation.ts";

/** What is not known of a course's work, and how the work goes as it shows. */
export interface Unknown {
  /** Decided on one by one as they show, in that order. */
  readonly decided: readonly Uncertainty[];
  /** Carried in expectation. */
  readonly rest: readonly Uncertainty[];
  /** The same, as the distribution has it: a check and the jobs that it may spare as one. */
  readonly joint: readonly Uncertainty[];
  /** Where the work may come to stand. */
  readonly leaves: readonly Leaf[];
  /** The ledger's resources as this course pays for them: another course counts other deliveries. */
  readonly resources: readonly Resource[];
  /** The finished bike. */
  readonly sale: Sale;
  /** What is done before anything unseen shows. */
  readonly opening: Work;
  readonly change: Change;
  /** What the rest brings together, and what is at stake as the decided ones show. */
  readonly sums: ClassSums;
  readonly stakes: DiscoveryStakes;
  /** What a penalty on visible condition takes off the takings. */
  readonly toldLoss: (penalty: Probability) => Money;
}

/** A course that is open, worked out. */
export interface OpenCourse {
  readonly course: CourseId;
  readonly open: true;
  readonly plan: WorkPlan;
  /** Expected work beyond the shown plan where it is carried through: what nobody has seen, jobs that fail. Minutes at speed 1. */
  readonly allowance: { readonly money: Money; readonly minutes: Minutes };
  /** What the right to change the course at a discovery is worth, in net benefit: 0 where nothing may turn up. */
  readonly rightToChange: Money;
  readonly branches: readonly Branch[];
  /** What may come of what is not known; null where nothing unseen changes the work. */
  readonly unknown: Unknown | null;
  readonly expected: Expectation;
  /** Orders of parts that it waits for. */
  readonly cashNeeded: Money;
}

/** A course that is closed to this bike, and why. */
export interface ClosedCourse {
  readonly course: CourseId;
  readonly open: false;
  readonly because: string;
}

export type WeighedCourse = OpenCourse | ClosedCourse;
