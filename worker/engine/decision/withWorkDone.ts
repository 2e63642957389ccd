import { reuseWorthOf, type Stock } from "../service/stock.ts";
import type { Book } from "./book.ts";
import type { SettledRequest } from "./settledRequest.ts";
import { isWhole } from "./standingFaults.ts";

/**
 * The request once finished work is taken in: what was missing is there, paint is new, and what was used up is no longer in stock.
 * @param stock what is left of what was bought
 */
export function withWorkDone(settled: SettledRequest, stock: Stock, book: Book): SettledRequest {
  const { done, attributes, missingParts, originality } = settled;
  const completed = done.has(book.service.completion.id) && isWhole(attributes);
  const repainted = [...done].some((id) => book.service.operations.get(id)!.effect.repaints);
  return {
    ...settled,
    stock,
    reuseWorth: reuseWorthOf(stock),
    attributes: completed ? { ...attributes, completeness: "complete" } : attributes,
    missingParts: completed ? [] : missingParts,
    originality: repainted
      ? Math.min(originality, book.catalogue.defaults.repaintedOriginality)
      : originality,
  };
}
