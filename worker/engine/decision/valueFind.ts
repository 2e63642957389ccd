import type { Appraisal } from "./appraisal.ts";
import type { AppraisalRequest } from "./appraisalRequest.ts";
import type { Book } from "./book.ts";
import { stateValues } from "./stateValues.ts";
import { weighFind } from "./weighFind.ts";

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
  const weighed = weighFind(request, book);
  const { currency, unconverted } = weighed.settled;
  const head = { currency, dataVersion: book.catalogue.version, demoData: true, unconverted } as const;
  return weighed.stop
    ? { ...head, value: null, stop: weighed.stop.caution }
    : { ...head, value: stateValues(weighed.situation, weighed.courses), stop: null };
}
