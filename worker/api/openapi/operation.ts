import * as z from "zod";
import { PROBLEM_MEDIA_TYPE } from "../problem.ts";
import type { Route } from "../routes/route.ts";
import { type JsonSchema, schemaUri } from "./jsonSchemas.ts";

type Names = Record<"input" | "output", ReadonlyMap<z.ZodType, string>>;

/** What goes wrong on a route that takes a body, by status. */
function faults(limitBytes: number): Readonly<Record<string, string>> {
  return {
    400: "The body is not well-formed JSON",
    413: `The body holds more than ${limitBytes} bytes`,
    415: "The body is not sent as application/json",
    422: "A field is not as the route asks; errors says which and what to change",
  };
}

/** One route as an OpenAPI operation. */
export function operation(route: Route, names: Names): JsonSchema {
  const body = route.body?.();
  return {
    operationId: route.operationId,
    summary: route.summary,
    description: route.description,
    ...(route.tagged ? { parameters: [IF_NONE_MATCH] } : {}),
    ...(body === undefined ? {} : { requestBody: requestBody(body.schema, body.example, names) }),
    responses: {
      200: answer(route, names),
      ...(route.tagged ? { 304: { description: "The document is the one named in If-None-Match" } } : {}),
      ...(body === undefined ? {} : problems(body.limitBytes)),
      500: problem("Something failed on our side"),
    },
  };
}

const IF_NONE_MATCH = {
  name: "If-None-Match",
  in: "header",
  required: false,
  description: "The ETag of the document at hand",
  schema: { type: "string" },
};

function requestBody(schema: z.ZodType, example: unknown, { input }: Names): JsonSchema {
  return { required: true, content: { "application/json": { schema: refer(schema, input), example } } };
}

function answer({ answer: schema, exampleAnswer, tagged, summary }: Route, { output }: Names): JsonSchema {
  const example = exampleAnswer === null ? {} : { example: exampleAnswer() };
  return {
    description: summary,
    ...(tagged
      ? { headers: { ETag: { schema: { type: "string" }, description: "Hash of the content" } } }
      : {}),
    content: { "application/json": { schema: refer(schema, output), ...example } },
  };
}

/** By name where the schema has one. */
function refer(schema: z.ZodType, names: ReadonlyMap<z.ZodType, string>): JsonSchema {
  const name = names.get(schema);
  if (name !== undefined) return { $ref: schemaUri(name) };
  const { $schema: _, ...inline } = z.toJSONSchema(schema, { io: "output", target: "draft-2020-12" });
  return inline;
}

function problems(limitBytes: number): JsonSchema {
  return Object.fromEntries(
    Object.entries(faults(limitBytes)).map(([status, words]) => [status, problem(words)]),
  );
}

function problem(description: string): JsonSchema {
  return { description, content: { [PROBLEM_MEDIA_TYPE]: { schema: { $ref: schemaUri("Problem") } } } };
}
