import * as z from "zod";
import { documentHandler } from "../documentHandler.ts";
import { openApiDocument } from "../openapi/document.ts";
import type { Service } from "../service.ts";
import type { Route } from "./route.ts";

/** `GET /openapi.json`: the document of these routes, itself among them. */
export function openapi(others: readonly Route[], { request, version }: Service): Route {
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
        documentHandler(() => openApiDocument([...others, route], request(), version)),
      );
    },
  };
  return route;
}
