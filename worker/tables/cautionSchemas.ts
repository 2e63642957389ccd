import * as z from "zod";
import type { Caution, CautionClause } from "../engine/decision/caution.ts";
import type { CourseId, LevelMatch } from "../engine/service/operation.ts";
import { condition } from "./conditionSchema.ts";

/** The rows of the table of cautions. Empty lists and false may be left out of a clause. */

const id = z.string().min(1);
const ids = z.array(id).default([]);

const levelMatch = z.strictObject({
  check: id,
  levels: z.array(id).min(1),
}) satisfies z.ZodType<LevelMatch>;

const course = z.enum([
  "restore",
  "make-safe",
  "sell-as-found",
  "break-for-parts",
  "leave",
]) satisfies z.ZodType<CourseId>;

const clause = z
  .strictObject({
    kind: z.enum(["hard", "soft"]),
    when: z.array(condition).default([]),
    findings: z.array(levelMatch).default([]),
    unseen: ids,
    operations: ids,
    uses: ids,
    courses: z.array(course).default([]),
    whileBlocked: z.boolean().default(false),
    beyondSkill: z.boolean().default(false),
  })
  .refine((row) => Object.values(row).some((one) => one === true || (Array.isArray(one) && one.length > 0)), {
    error: "a clause names what raises it",
  })
  .refine((row) => row.kind === "soft" || row.unseen.length === 0, {
    error: "what was not looked at raises no hard caution",
  }) satisfies z.ZodType<CautionClause>;

/** A caution with the clauses that raise it. */
export const cautionRow = z.strictObject({
  id,
  title: z.string().min(1).max(60),
  text: z.string().min(1),
  clauses: z.array(clause).min(1),
}) satisfies z.ZodType<Caution>;
