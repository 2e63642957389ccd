import { valueFind } from "../../engine/decision/valueFind.ts";
import { valuationAnswer } from "../answers/value.ts";
import type { Service } from "../service.ts";
import { findRoute } from "./findRoute.ts";
import type { Route } from "./route.ts";

/** `POST /v1/valuations`: what a find would sell for. */
export function valuations(service: Service): Route {
  return findRoute(
    {
      path: "/v1/valuations",
      operationId: "valuations",
      summary: "What a find would sell for in each state",
      description:
        "Going rates as found, made safe, restored and as parts, each with its range, and what drives them. " +
        "No figure where the matter is stopped.",
      answer: valuationAnswer,
      compute: valueFind,
    },
    service,
  );
}
