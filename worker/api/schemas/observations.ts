import * as z from "zod";
import { shortText } from "./amounts.ts";
import { byId } from "./byId.ts";

/** What was seen at one place. */
export const reading = form(
  {
    level: shortText.optional().describe("Id of the level judged"),
    measured: z
      .record(shortText, z.number())
      .optional()
      .describe("Value by input id of the check, in the input's unit; it wins over the level"),
    flags: z
      .array(shortText)
      .max(20)
      .optional()
      .describe("Ids of marks that the check knows; they win over both"),
  },
  "What was seen at one place",
  "Give a level, a measurement or flags; leave out a check that nobody made",
);

const frontAndRear = form(
  { front: reading.optional(), rear: reading.optional() },
  "Front and rear apart; one that is left out was not looked at",
  "Give front, rear or both",
);

/**
 * One of the forms of an observation: a closed object that says something. One with a fault is not the form that was
 * meant: Zod would take an unknown field for the lesser fault and settle for that form, where both are to be weighed.
 */
function form<Shape extends z.core.$ZodLooseShape>(shape: Shape, description: string, ifEmpty: string) {
  const refuse = (seen: object, context: z.RefinementCtx): void => {
    const issues = context.issues.splice(0).map((issue) => ({ ...issue, continue: false }));
    if (issues.length === 0 && Object.keys(seen).length === 0) context.addIssue(ifEmpty);
    context.issues.push(...issues);
  };
  return z
    .strictObject(shape)
    .superRefine(refuse, { when: () => true })
    .meta({ description, minProperties: 1 });
}

/** One reading for the whole bicycle (or both wheels), or front and rear apart. */
export const observation = z.union([reading, frontAndRear]);

/**
 * What was looked at, by check. What is absent was not looked at; it never counts as good.
 * @param checks ids of the checks there are
 */
export function observations(checks: readonly string[]) {
  const described = "What was looked at, by check id. Absent is unknown, not good";
  return byId(checks, observation).describe(described);
}
