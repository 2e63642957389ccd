import type { Hono } from "hono";
import { appOf } from "./appOf.ts";
import { routes } from "./routes/routes.ts";
import { type Dependencies, serviceOf } from "./service.ts";

/** The API with every route, answering each failure as problem details (RFC 9457). */
export function createApp(dependencies: Dependencies): Hono {
  return appOf(routes(serviceOf(dependencies)));
}
