import { type FieldError, type Problem, problemDetails } from "./problem.ts";
import { MOST_FAULTS } from "./zodIssues.ts";

/** Well-formed JSON whose fields are not as the route asks, as problem details of status 422. */
export function invalidFields(errors: FieldError[]): Problem {
  const many =
    errors.length === MOST_FAULTS ? `${MOST_FAULTS} fields or more are` : `${errors.length} fields are`;
  const count = errors.length === 1 ? "One field is" : many;
  return problemDetails(
    422,
    "Unprocessable Content",
    `${count} not as this route asks; see "errors".`,
    errors,
  );
}
