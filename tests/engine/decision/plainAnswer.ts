import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { type Report, reportFind } from "../../../worker/engine/decision/appraise.ts";
import { weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { BOOK } from "./shippedBook.ts";

/** The answer without what to check next, which thousands of random finds that are asked for something else need not wait for. */
export function plainAnswer(request: AppraisalRequest): Report {
  return reportFind(weighFind(request, BOOK), BOOK, []);
}

/** Asks once for each find: one seed draws the same finds for several laws. */
export function askedOnce<Answer>(
  ask: (request: AppraisalRequest) => Answer,
): (request: AppraisalRequest) => Answer {
  const answers = new Map<string, Answer>();
  return (request) => {
    const key = JSON.stringify(request);
    if (!answers.has(key)) answers.set(key, ask(request));
    return answers.get(key)!;
  };
}

export const plainOnce = askedOnce(plainAnswer);
