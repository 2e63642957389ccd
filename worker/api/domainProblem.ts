import type { DomainError, DomainErrorCode } from "../engine/domainError.ts";
import { type FieldError, type Problem, problemDetails, problemResponse } from "./problem.ts";

/** The engine's refusal of a request as an answer of its own. */
export function domainProblem(error: DomainError): Response {
  return problemResponse(domainProblemDetails(error));
}

/**
 * The engine's refusal of a request as problem details: what is wrong, where it stands, what to change.
 * @param below where in the body the part stands that the engine was given (RFC 6901)
 */
export function domainProblemDetails({ code, message, pointer }: DomainError, below = ""): Problem {
  const errors = [{ pointer: below + (pointer ?? ""), message }];
  switch (code) {
    case "unknown-id":
      return unprocessable('A name is not known here; see "errors".', errors);
    case "impossible-measurement":
      return unprocessable('No bicycle measures like that; see "errors".', errors);
    case "out-of-domain":
      return unprocessable('Something does not go with the rest; see "errors".', errors);
    case "inconsistent-table":
      console.error(`inconsistent table: ${message}`);
      return problemDetails(
        500,
        "Internal Server Error",
        "Our tables contradict each other; the request was not at fault.",
      );
    default:
      return unknownCode(code, errors);
  }
}

function unprocessable(detail: string, errors: FieldError[]): Problem {
  return problemDetails(422, "Unprocessable Content", detail, errors);
}

/** The types leave no other code; one that came all the same is the request's fault like most. */
function unknownCode(code: never, errors: FieldError[]): Problem {
  console.error(`no sentence for the error code ${code satisfies DomainErrorCode}`);
  return unprocessable('The request cannot be worked out; see "errors".', errors);
}
