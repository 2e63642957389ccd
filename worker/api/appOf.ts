import { Hono } from "hono";
import { HTTPException } from "hono/http-exception";
import { DomainError } from "../engine/domainError.ts";
import { allowedMethods } from "./allowedMethods.ts";
import { domainProblem } from "./domainProblem.ts";
import { problem } from "./problem.ts";
import type { Route } from "./routes/route.ts";

/** An app of these routes, answering each failure as problem details (RFC 9457). */
export function appOf(routes: readonly Route[]): Hono {
  const app = new Hono();
  app.notFound((c) => noSuchRoute(c.req.method, c.req.path, allowedMethods(app, c.req.path)));
  app.onError(failure);
  for (const { mount } of routes) mount(app);
  return app;
}

/** 405 where the path answers other methods, else 404. */
function noSuchRoute(method: string, path: string, methods: readonly string[]): Response {
  if (methods.length === 0) {
    return problem(404, "Not Found", `There is no ${path} here; GET /openapi.json lists every route.`);
  }
  const allow = methods.join(", ");
  const detail = `${path} answers ${allow}, not ${method}.`;
  return problem(405, "Method Not Allowed", detail, undefined, { Allow: allow });
}

function failure(error: Error): Response {
  if (error instanceof DomainError) return domainProblem(error);
  if (error instanceof HTTPException && error.status < 500) {
    return problem(error.status, "Request Refused", error.message);
  }
  console.error(error);
  return problem(500, "Internal Server Error", "Something failed on our side; the request was not at fault.");
}
