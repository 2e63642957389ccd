import type { Money } from "../quantity.ts";
import type { Allowance } from "../service/allowance.ts";
import type { CourseId } from "../service/operation.ts";
import type { WorkPlan } from "../service/workPlan.ts";
import type { Branch } from "./branch.ts";
import type { Expectation } from "./expectation.ts";

/** A course that is open, worked out. */
export interface OpenCourse {
  readonly course: CourseId;
  readonly open: true;
  readonly plan: WorkPlan;
  readonly allowance: Allowance;
  readonly branches: readonly Branch[];
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
