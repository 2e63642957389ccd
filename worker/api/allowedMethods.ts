import type { Hono } from "hono";

const METHODS = ["GET", "POST", "PUT", "PATCH", "DELETE"] as const;

/**
 * The methods an app's routes answer at a path, HEAD along with GET; none where no route stands there.
 * Middleware, which Hono registers for all methods, is no route.
 */
export function allowedMethods(app: Hono, path: string): string[] {
  return METHODS.filter((method) => {
    const [handlers] = app.router.match(method, path);
    return handlers.some(([[, route]]) => route.method === method);
  }).flatMap((method) => (method === "GET" ? ["GET", "HEAD"] : [method]));
}
