import * as z from "zod";
import type { Catalogue } from "../../engine/decision/catalogue.ts";
import { currency } from "./currency.ts";
import { find } from "./find.ts";
import { observations } from "./observations.ts";
import { workshop } from "./workshop.ts";

/** The ids that a request may name. */
export interface Vocabulary {
  readonly checks: readonly string[];
  readonly parts: readonly string[];
  readonly tools: readonly string[];
}

/** The ids in the tables. */
export function vocabulary({ inspection, service }: Pick<Catalogue, "inspection" | "service">): Vocabulary {
  const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);
  return { checks: ids(inspection.checks), parts: ids(service.parts), tools: ids(service.tools) };
}

/**
 * What the three routes that look at one find take. Closed: a misspelt field or id is named, never ignored.
 * What comes out is the engine's own type, with nothing left to check but levels, inputs and flags.
 */
export function appraisalRequest({ checks, parts, tools }: Vocabulary) {
  return z.strictObject({
    currency: currency.optional(),
    find: find(parts),
    observations: observations(checks).default({}),
    workshop: workshop(parts, tools).optional(),
  });
}

/** The schema itself. */
export type AppraisalRequestSchema = ReturnType<typeof appraisalRequest>;
