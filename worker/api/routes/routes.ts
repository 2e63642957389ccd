import type { Service } from "../service.ts";
import { answeringRoutes } from "./answeringRoutes.ts";
import { openapi } from "./openapi.ts";
import type { Route } from "./route.ts";

/** Every route of the API: the one table that the app and the document are made from. */
export function routes(service: Service): readonly Route[] {
  const answering = answeringRoutes(service);
  return [...answering, openapi(answering, service)];
}
