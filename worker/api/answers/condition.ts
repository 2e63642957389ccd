import * as z from "zod";
import {
  ATTRIBUTE_VALUES,
  type AttributeDefault,
  type AttributeName,
  type Condition,
} from "../../engine/bicycle.ts";
import { words } from "./figures.ts";

export const ATTRIBUTE_NAMES = Object.keys(ATTRIBUTE_VALUES) as AttributeName[];
const attribute = z.enum(ATTRIBUTE_NAMES);

/** True where the attribute has one of the values. */
export const condition = z.strictObject({
  attribute,
  isOneOf: z.array(words),
}) satisfies z.ZodType<Condition>;

/** All of them hold; the empty list always does. */
export const conditions = z.array(condition);

/** A default for one attribute: the first row whose conditions hold on what is settled already. */
export const attributeDefault = z.strictObject({
  attribute,
  when: conditions,
  value: words,
}) satisfies z.ZodType<AttributeDefault>;
