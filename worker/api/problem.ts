import type { ContentfulStatusCode } from "hono/utils/http-status";

/** The media type of RFC 9457. */
export const PROBLEM_MEDIA_TYPE = "application/problem+json";

/** One field that is wrong: where it stands (RFC 6901), what to change, and what would be accepted where that is a short list. */
export interface FieldError {
  pointer: string;
  message: string;
  allowed?: (string | number | boolean | null)[];
}

/** Problem details as in RFC 9457, with one extension member for the fields that are wrong. */
export interface Problem {
  type: string;
  title: string;
  status: number;
  detail: string;
  errors?: FieldError[];
}

/**
 * The body of a problem answer. `type` is "about:blank", which RFC 9457 (section 4.2.1) reserves for problems that
 * mean no more than their HTTP status; so `title` is that status in words.
 * @param status HTTP status, 400 to 599
 * @param title the status in words, the same for every problem of its kind
 * @param detail what is wrong with this request and what to do about it
 * @param errors the fields at fault, where single fields are
 */
export function problemDetails(
  status: ContentfulStatusCode,
  title: string,
  detail: string,
  errors?: FieldError[],
): Problem {
  return { type: "about:blank", title, status, detail, ...(errors === undefined ? {} : { errors }) };
}

/**
 * The answer to a request that cannot be served, as `application/problem+json`.
 * Arguments as for {@link problemDetails}; `headers` are added to the answer (Allow, Retry-After and the like).
 */
export function problem(
  status: ContentfulStatusCode,
  title: string,
  detail: string,
  errors?: FieldError[],
  headers?: Record<string, string>,
): Response {
  return problemResponse(problemDetails(status, title, detail, errors), headers);
}

/** Problem details as an answer. */
export function problemResponse(details: Problem, headers?: Record<string, string>): Response {
  return new Response(JSON.stringify(details), {
    status: details.status,
    headers: { ...headers, "Content-Type": PROBLEM_MEDIA_TYPE, "Cache-Control": "no-store" },
  });
}
