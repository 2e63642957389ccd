import * as z from "zod";
import { ATTRIBUTE_VALUES } from "../engine/bicycle.ts";

/** Words that several tables share. */

export const tier = z.enum(ATTRIBUTE_VALUES.componentTier);
export const frameMaterial = z.enum(ATTRIBUTE_VALUES.frameMaterial);
export const category = z.enum(ATTRIBUTE_VALUES.category);
