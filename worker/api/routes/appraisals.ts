import { appraise } from "../../engine/decision/appraise.ts";
import { appraisalAnswer } from "../answers/appraisal.ts";
import type { Service } from "../service.ts";
import { findRoute } from "./findRoute.ts";
import type { Route } from "./route.ts";

/** `POST /v1/appraisals`: the whole answer for one find. */
export function appraisals(service: Service): Route {
  return findRoute(
    {
      path: "/v1/appraisals",
      operationId: "appraisals",
      summary: "The whole answer for one find",
      description:
        "Findings, value by state, the five courses with their margin, hours and margin an hour, each with its range, " +
        "the course to take and why, the most to pay, and cautions. The same request gives the same bytes.",
      answer: appraisalAnswer,
      compute: appraise,
    },
    service,
  );
}
