import type { Route } from "../routes/route.ts";
import { namedSchemas, type RequestSchemas } from "./components.ts";
import { type JsonSchema, jsonSchemas } from "./jsonSchemas.ts";
import { operation } from "./operation.ts";

const DESCRIPTION =
  "Should this old bicycle be restored, made safe, sold as found, broken for parts, or left? Margin and hours of each " +
  "course with their range, compared at the margin. Prices and chances come from invented demo data. It screens; it " +
  "does not certify.";

/** The OpenAPI 3.1 document of the routes. */
export function openApiDocument(
  routes: readonly Route[],
  requests: RequestSchemas,
  version: string,
): JsonSchema {
  const names = namedSchemas(requests);
  const paths: Record<string, JsonSchema> = {};
  for (const route of routes) {
    paths[route.path] = { ...paths[route.path], [route.method]: operation(route, names) };
  }
  return {
    openapi: "3.1.1",
    info: { title: "Spokeworth", version, description: DESCRIPTION },
    servers: [{ url: "/" }],
    paths,
    components: {
      schemas: { ...jsonSchemas(names.input, "input"), ...jsonSchemas(names.output, "output") },
    },
  };
}
