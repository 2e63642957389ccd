import type { Service } from "../service.ts";
import { appraisals } from "./appraisals.ts";
import { comparisons } from "./comparisons.ts";
import { findings } from "./findings.ts";
import { health } from "./health.ts";
import { openapi } from "./openapi.ts";
import { referenceRoute } from "./reference.ts";
import type { Route } from "./route.ts";
import { sellingPlans } from "./sellingPlans.ts";
import { valuations } from "./valuations.ts";

/** Every route of the API: the one table that the app and the document are made from. */
export function routes(service: Service): readonly Route[] {
  const answering = [referenceRoute, findings, valuations, appraisals, comparisons, sellingPlans, health].map(
    (route) => route(service),
  );
  return [...answering, openapi(answering, service)];
}
