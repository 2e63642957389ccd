import type { Inspection } from "../inspection/finding.ts";
import { inspect } from "../inspection/inspect.ts";
import type { Book } from "./book.ts";
import type { SettledRequest } from "./settledRequest.ts";

/** What was observed and measured of a find whose description is settled. */
export function inspectSettled({ attributes, request }: SettledRequest, book: Book): Inspection {
  return inspect(attributes, request.find.dimensions, request.observations, book.inspection);
}
