import * as z from "zod";
import { documentHandler } from "../documentHandler.ts";
import type { RequestSchemas } from "../openapi/components.ts";
import { openApiDocument } from "../openapi/document.ts";
import type { Service } from "../service.ts";
import type { Route } from "./route.ts";

/** `GET /openapi.json`: the document of these routes, itself among them. */
export function openapi(others: readonly Route[], service: Service): Route {
  const { version } = service;
  const route: Route = {
    method: "get",
    path: "/openapi.json",
    operationId: "openapi",
    summary: "This document",
    description: "The routes, what they take and what they answer, as OpenAPI 3.1.",
    body: null,
    answer: z.looseObject({ openapi: z.literal("3.1.1") }),
    exampleAnswer: null,
    tagged: true,
    mount: (app) => {
      app.get(
        "/openapi.json",
        documentHandler(() => openApiDocument([...others, route], requestSchemas(service), version)),
      );
    },
  };
  return route;
}

function requestSchemas({ request, comparison, selling }: Service): RequestSchemas {
  const { documented, entry } = comparison();
  return { appraisal: request(), comparison: documented, comparisonEntry: entry, selling: selling() };
}
