import type { Service } from "../service.ts";
import { appraisals } from "./appraisals.ts";
import { comparisons } from "./comparisons.ts";
import { findings } from "./findings.ts";
import { health } from "./health.ts";
import { referenceRoute } from "./reference.ts";
import type { Route } from "./route.ts";
import { sellingPlans } from "./sellingPlans.ts";
import { valuations } from "./valuations.ts";

/** Every route but the document of them all: what a client that knows the API can ask. */
export function answeringRoutes(service: Service): readonly Route[] {
  return [referenceRoute, findings, valuations, appraisals, comparisons, sellingPlans, health].map((route) =>
    route(service),
  );
}
