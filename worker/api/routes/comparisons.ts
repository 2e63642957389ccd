import { compareFinds } from "../../engine/portfolio/compareFinds.ts";
import type { ComparisonRequest } from "../../engine/portfolio/comparison.ts";
import { comparisonAnswer as answerSchema } from "../answers/comparison.ts";
import { type ComparisonAnswer, comparisonAnswer } from "../comparisonAnswer.ts";
import { jsonBody } from "../jsonBody.ts";
import type { ParsedComparison } from "../schemas/comparisonRequest.ts";
import type { Service } from "../service.ts";
import { submittedFinds } from "../submittedFinds.ts";
import { exampleComparison } from "./exampleComparison.ts";
import type { Route } from "./route.ts";

/** The largest body: two hundred finds with all that can be seen of each. */
const BODY_LIMIT_BYTES = 8 * 1024 * 1024;

/** `POST /v1/comparisons`: several finds side by side, and which of them to take together. */
export function comparisons(service: Service): Route {
  const schemas = service.comparison;
  const answer = (request: ParsedComparison) => compare(request, service);
  return {
    method: "post",
    path: "/v1/comparisons",
    operationId: "comparisons",
    summary: "Several finds side by side, and which of them to take together",
    description:
      "Each find as in an appraisal, and the set of finds and courses with the highest total that fits the hours, the cash " +
      "and the room there are: proven best, with what one more of each would add and the find that would come in next. A " +
      "find that cannot be worked out is told with its problem, and the others are answered.",
    body: () => ({
      schema: schemas().documented,
      example: exampleComparison,
      limitBytes: BODY_LIMIT_BYTES,
    }),
    answer: answerSchema,
    exampleAnswer: () => answer(schemas().parsed.parse(exampleComparison)),
    tagged: false,
    mount: (app) => {
      app.post(
        "/v1/comparisons",
        jsonBody(() => schemas().parsed, BODY_LIMIT_BYTES),
        (c) => c.json(answer(c.req.valid("json"))),
      );
    },
  };
}

function compare(request: ParsedComparison, { comparison, catalogue, book }: Service): ComparisonAnswer {
  const { currency: tables } = catalogue().defaults;
  const submissions = submittedFinds(request, comparison().entry, tables);
  const { hours = null, cash = null, slots = null } = request.budgets ?? {};
  const asked: ComparisonRequest = {
    currency: request.currency ?? tables,
    finds: submissions.flatMap((one) => ("submitted" in one ? [one.submitted] : [])),
    budgets: { hours, cash, slots },
    objective: request.objective ?? "netBenefit",
  };
  return comparisonAnswer(submissions, compareFinds(asked, book()));
}
