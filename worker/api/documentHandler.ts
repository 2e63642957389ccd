import type { Handler } from "hono";
import { answerDocument, type CachedDocument, cachedDocument } from "./cachedDocument.ts";

/**
 * Answers with one JSON document, made at the first request and kept. The finished document is kept, never the promise
 * of it: what one request of an isolate began, another may not wait for.
 */
export function documentHandler(make: () => unknown): Handler {
  let kept: CachedDocument | undefined;
  return async (c) => {
    kept ??= await cachedDocument(make());
    return answerDocument(c.req.raw, kept);
  };
}
