import type { MiddlewareHandler } from "hono";
import type * as z from "zod";
import { invalidFields } from "./invalidFields.ts";
import { issueSentence } from "./issueSentence.ts";
import { problem, problemResponse } from "./problem.ts";
import { readText } from "./readText.ts";
import { zodIssuesToErrors } from "./zodIssues.ts";

/** The largest body a route takes unless it says otherwise, 2 MiB: five thousand comparables with all that can be said of each. */
export const BODY_LIMIT_BYTES = 2 * 1024 * 1024;

/** What a validated JSON body adds to a route's types: what goes in, what the handler gets. */
export interface JsonInput<Schema extends z.ZodType> {
  in: { json: z.input<Schema> };
  out: { json: z.output<Schema> };
}

/**
 * Reads a request's JSON body against a schema; the handler finds it at `c.req.valid("json")`.
 * Answers 415 for another media type, 413 for too many bytes, 400 for what is not JSON, 422 for JSON that is not as
 * the schema asks, each as problem details.
 * @param schemaOf the request's shape, or what makes it at the first request; closed, so that a misspelt field is named
 * rather than ignored
 * @param limitBytes the largest body taken, in bytes
 */
export function jsonBody<Schema extends z.ZodType>(
  schemaOf: Schema | (() => Schema),
  limitBytes: number = BODY_LIMIT_BYTES,
): MiddlewareHandler<object, string, JsonInput<Schema>> {
  return async (c, next) => {
    const refused = refusedMediaType(c.req.raw.headers);
    if (refused !== null) return refused;
    const text = await readText(c.req.raw, limitBytes);
    if (text instanceof Response) return text;
    const json = parseJson(text);
    if (json instanceof Response) return json;
    const schema = typeof schemaOf === "function" ? schemaOf() : schemaOf;
    const parsed = schema.safeParse(json.value, { error: issueSentence });
    if (!parsed.success) return invalidBody(parsed.error, schema);
    c.req.addValidatedData("json", parsed.data as object);
    await next();
    return undefined;
  };
}

/** 415 unless the body is declared as plain JSON in UTF-8, not compressed; null when it is. */
function refusedMediaType(headers: Headers): Response | null {
  const mediaType = headers.get("Content-Type") ?? "";
  if (!/^application\/json\s*(;\s*charset="?utf-8"?\s*)?$/i.test(mediaType.trim())) {
    const got = mediaType === "" ? "no media type" : `"${mediaType}"`;
    return problem(
      415,
      "Unsupported Media Type",
      `Send the body as JSON with "Content-Type: application/json", got ${got}.`,
      undefined,
      { Accept: "application/json" },
    );
  }
  const coding = headers.get("Content-Encoding") ?? "identity";
  if (coding.toLowerCase() === "identity") return null;
  return problem(415, "Unsupported Media Type", `Send the body uncompressed, got "${coding}".`, undefined, {
    "Accept-Encoding": "identity",
  });
}

/** The value a text holds, or 400 where it is not JSON. */
function parseJson(text: string): { value: unknown } | Response {
  if (text.trim() === "") return problem(400, "Bad Request", "The body is empty: send a JSON object.");
  try {
    return { value: JSON.parse(text) };
  } catch (error) {
    const why = error instanceof SyntaxError ? ` (${error.message})` : "";
    return problem(400, "Bad Request", `The body is not well-formed JSON${why}.`);
  }
}

/** 422 with every field at fault. */
function invalidBody(error: z.ZodError, schema: z.ZodType): Response {
  return problemResponse(invalidFields(zodIssuesToErrors(error, schema)));
}
