import type { Appraisal } from "./appraisal.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { inspectSettled } from "./inspectFind.ts";
import { settleRequest } from "./settledRequest.ts";
import { situationOf } from "./situation.ts";
import { stateValues } from "./stateValues.ts";
import { stopOf } from "./stop.ts";
import { weighCourses } from "./weigh.ts";

export type ValuationAnswer = Pick<
  Appraisal,
  "currency" | "dataVersion" | "demoData" | "unconverted" | "value"
> & {
  readonly stop: string | null;
};

/**
 * Going rates of one find by state and what drives them; null where the matter is stopped.
 * @throws DomainError with a pointer into the request
 */
export function valueFind(request: AppraisalRequest, book: Book): ValuationAnswer {
  const settled = settleRequest(request, book);
  const inspection = inspectSettled(settled, book);
  const head = {
    currency: settled.currency,
    dataVersion: book.catalogue.version,
    demoData: true,
    unconverted: settled.unconverted,
  } as const;
  const stop = stopOf(settled, inspection, book);
  if (stop) return { ...head, value: null, stop: stop.caution };
  const situation = situationOf(settled, inspection, book);
  return { ...head, value: stateValues(situation, weighCourses(situation)), stop: null };
}
