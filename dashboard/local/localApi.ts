import { appOf } from "../../worker/api/appOf.ts";
import { answeringRoutes } from "../../worker/api/routes/answeringRoutes.ts";
import { serviceOf } from "../../worker/api/service.ts";
import type { Catalogue } from "../../worker/engine/decision/catalogue.ts";
import type { Question, Reply } from "./question.ts";

/**
 * The API of the server in this thread: the same routes, schemas and engine, so the same bytes for the same question.
 * Only `/openapi.json` is left out: who reads it has the network.
 * @param version of the service, as in package.json
 * @param catalogue the tables the server loads, as the build wrote them down
 */
export function localApi(version: string, catalogue: Catalogue): (question: Question) => Promise<Reply> {
  const app = appOf(answeringRoutes(serviceOf({ version, readCatalogue: () => catalogue })));
  return async ({ method, path, body }) => {
    const headers = { "Content-Type": "application/json" };
    const response = await app.request(path, body === null ? { method } : { method, headers, body });
    return { status: response.status, body: await response.text() };
  };
}
