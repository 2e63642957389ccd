import type { Condition } from "../bicycle.ts";
import type { CheckId } from "../inspection/check.ts";
import type { CourseId, LevelMatch, OperationId } from "../service/operation.ts";
import type { PartId } from "../service/part.ts";

/**
 * One way to raise a caution. All fields that are not empty must hold; within a list any entry is enough.
 * Only observed levels raise a hard caution.
 */
export interface CautionClause {
  readonly kind: "hard" | "soft";
  readonly when: readonly Condition[];
  readonly findings: readonly LevelMatch[];
  /** Applies to the bike and was not looked at. */
  readonly unseen: readonly CheckId[];
  /** In the plan of a course that is open. */
  readonly operations: readonly OperationId[];
  /** Part, consumable or service used in the plan of a course that is open. */
  readonly uses: readonly PartId[];
  /** One of these courses is open. */
  readonly courses: readonly CourseId[];
  /** Only while some finding blocks riding. */
  readonly whileBlocked: boolean;
  /** Only where a safety-critical operation in an open plan asks for more skill than the user's. */
  readonly beyondSkill: boolean;
}

/** A caution to show. Hard ones come before money; soft ones are shown once. */
export interface Caution {
  readonly id: string;
  /** A few words that stand alone. */
  readonly title: string;
  readonly text: string;
  readonly clauses: readonly CautionClause[];
}
