import * as z from "zod";
import type { Catalogue } from "../../engine/decision/catalogue.ts";
import { comparables } from "./comparables.ts";
import { currency } from "./currency.ts";
import { currencyFaults } from "./currencyFaults.ts";
import { find } from "./find.ts";
import { observations } from "./observations.ts";
import { workshop } from "./workshop.ts";

/** The ids that a request may name. */
export interface Vocabulary {
  readonly checks: readonly string[];
  readonly parts: readonly string[];
  readonly operations: readonly string[];
  readonly tools: readonly string[];
  /** What a request counts in unless it says. */
  readonly currency: string;
}

/** The ids in the tables. */
export function vocabulary({
  inspection,
  service,
  defaults,
}: Pick<Catalogue, "inspection" | "service" | "defaults">): Vocabulary {
  const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);
  return {
    checks: ids(inspection.checks),
    parts: ids(service.parts),
    operations: ids(service.operations),
    tools: ids(service.tools),
    currency: defaults.currency,
  };
}

/**
 * What the three routes that look at one find take. Closed: a misspelt field or id is named, never ignored.
 * What comes out is the engine's own type, with nothing left to check but levels, inputs and flags.
 */
export function appraisalRequest({
  checks,
  parts,
  operations,
  tools,
  currency: defaultCurrency,
}: Vocabulary) {
  return z
    .strictObject({
      currency: currency.optional(),
      find: find({ parts, operations }),
      observations: observations(checks).default({}),
      comparables: comparables("Prices you know of, paid or asked: the value learns from them"),
      workshop: workshop(parts, tools).optional(),
    })
    .superRefine((request, context) => {
      const pricing = { ...request, tables: defaultCurrency };
      for (const fault of currencyFaults(pricing)) context.addIssue({ code: "custom", ...fault });
    });
}

/** The schema itself. */
export type AppraisalRequestSchema = ReturnType<typeof appraisalRequest>;
