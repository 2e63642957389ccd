import * as z from "zod";
import { ATTRIBUTE_VALUES, type AttributeName, type Condition } from "../engine/bicycle.ts";

/** An identifier of a table's row. */
export const id = z.string().regex(/^[a-z0-9]+([-_][a-z0-9]+)*$/);
export const attribute = z.enum(Object.keys(ATTRIBUTE_VALUES) as AttributeName[]);

/** Whether an attribute of the description can have the value. */
export function isValueOf(name: AttributeName, value: string): boolean {
  return (ATTRIBUTE_VALUES[name] as readonly string[]).includes(value);
}

/** A condition on the description; a value that its attribute does not have is refused. */
export const condition = z
  .strictObject({ attribute, isOneOf: z.array(z.string()).min(1) })
  .superRefine((row, context) => {
    for (const value of row.isOneOf.filter((one) => !isValueOf(row.attribute, one))) {
      context.addIssue({ code: "custom", path: ["isOneOf"], message: `${value} is no ${row.attribute}` });
    }
  }) satisfies z.ZodType<Condition>;

/** Conditions that must all hold; left out, none is asked. */
export const conditions = z.array(condition).default([]);
