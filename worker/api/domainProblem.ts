import type { DomainError, DomainErrorCode } from "../engine/domainError.ts";
import { problem } from "./problem.ts";

const UNPROCESSABLE = "Unprocessable Content";

/** The engine's refusal of a request as problem details: what is wrong, where it stands, what to change. */
export function domainProblem({ code, message, pointer }: DomainError): Response {
  const errors = [{ pointer: pointer ?? "", message }];
  switch (code) {
    case "unknown-id":
      return problem(422, UNPROCESSABLE, 'A name is not known here; see "errors".', errors);
    case "impossible-measurement":
      return problem(422, UNPROCESSABLE, 'No bicycle measures like that; see "errors".', errors);
    case "out-of-domain":
      return problem(422, UNPROCESSABLE, 'Something does not go with the rest; see "errors".', errors);
    case "inconsistent-table":
      console.error(`inconsistent table: ${message}`);
      return problem(
        500,
        "Internal Server Error",
        "Our tables contradict each other; the request was not at fault.",
      );
    default:
      return unknownCode(code, errors);
  }
}

/** The types leave no other code; one that came all the same is the request's fault like most. */
function unknownCode(code: never, errors: { pointer: string; message: string }[]): Response {
  console.error(`no sentence for the error code ${code satisfies DomainErrorCode}`);
  return problem(422, UNPROCESSABLE, 'The request cannot be worked out; see "errors".', errors);
}
