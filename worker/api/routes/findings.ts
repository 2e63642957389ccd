import { inspectFind } from "../../engine/decision/inspectFind.ts";
import { findingsAnswer } from "../answers/inspection.ts";
import type { Service } from "../service.ts";
import { findRoute } from "./findRoute.ts";
import type { Route } from "./route.ts";

/** `POST /v1/findings`: what looking at a find came to. */
export function findings(service: Service): Route {
  return findRoute(
    {
      path: "/v1/findings",
      operationId: "findings",
      summary: "What looking at a find came to",
      description:
        "Observations and measurements turned into findings, with what blocks, what is still owed, the likeliest faults " +
        "that nobody looked for, and cautions. No money.",
      answer: findingsAnswer,
      compute: inspectFind,
    },
    service,
  );
}
