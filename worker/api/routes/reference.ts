import { referenceAnswer } from "../answers/reference.ts";
import { documentHandler } from "../documentHandler.ts";
import { reference } from "../reference/reference.ts";
import type { Service } from "../service.ts";
import type { Route } from "./route.ts";

/** `GET /v1/reference`: everything a form needs. */
export function referenceRoute({ catalogue }: Service): Route {
  return {
    method: "get",
    path: "/v1/reference",
    operationId: "reference",
    summary: "Everything a form needs",
    description:
      "Words of the description, checks with how to make them and on which bicycles, jobs, parts, tools, cautions, " +
      "currencies, and what stands in for what a request leaves out. Tagged with a hash of its content.",
    body: null,
    answer: referenceAnswer,
    exampleAnswer: null,
    tagged: true,
    mount: (app) => {
      app.get(
        "/v1/reference",
        documentHandler(() => reference(catalogue())),
      );
    },
  };
}
