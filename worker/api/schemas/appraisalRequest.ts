import * as z from "zod";
import type { Catalogue } from "../../engine/decision/catalogue.ts";
import { comparable, MOST_COMPARABLES } from "./comparables.ts";
import { currency } from "./currency.ts";
import { find } from "./find.ts";
import { observations } from "./observations.ts";
import { workshop } from "./workshop.ts";

/** The ids that a request may name. */
export interface Vocabulary {
  readonly checks: readonly string[];
  readonly parts: readonly string[];
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
    tools: ids(service.tools),
    currency: defaults.currency,
  };
}

/**
 * What the three routes that look at one find take. Closed: a misspelt field or id is named, never ignored.
 * What comes out is the engine's own type, with nothing left to check but levels, inputs and flags.
 */
export function appraisalRequest({ checks, parts, tools, currency: defaultCurrency }: Vocabulary) {
  return z
    .strictObject({
      currency: currency.optional(),
      find: find(parts),
      observations: observations(checks).default({}),
      comparables: z
        .array(comparable)
        .max(MOST_COMPARABLES)
        .optional()
        .describe("Prices you know of, paid or asked: the value learns from them"),
      workshop: workshop(parts, tools).optional(),
    })
    .superRefine((request, context) => refuseOtherCurrency(request, defaultCurrency, context));
}

/** Prices of two currencies are never mixed: which rate and which day is the user's to say. */
function refuseOtherCurrency(
  { currency: own, comparables, workshop: shop }: Priced,
  tables: string,
  context: z.RefinementCtx,
): void {
  const counted = own ?? tables;
  comparables?.forEach((one, index) => {
    if (one.currency === undefined || one.currency === counted) return;
    const message = `currency is ${one.currency}, and the request counts in ${counted}: convert the price at a rate of your choice and give it in ${counted}`;
    context.addIssue({ code: "custom", path: ["comparables", index, "currency"], message });
  });
  if (counted === tables || (comparables ?? []).length === 0 || shop?.priceLevel !== undefined) return;
  const message = `priceLevel is missing: comparables in ${counted} stand beside demo prices in ${tables}, so say how many ${counted} buy what 1 ${tables} buys`;
  context.addIssue({ code: "custom", path: ["workshop", "priceLevel"], message });
}

/** What of a request bears on currency. */
interface Priced {
  readonly currency?: string | undefined;
  readonly comparables?: readonly { readonly currency?: string | undefined }[] | undefined;
  readonly workshop?: { readonly priceLevel?: number | undefined } | undefined;
}

/** The schema itself. */
export type AppraisalRequestSchema = ReturnType<typeof appraisalRequest>;
