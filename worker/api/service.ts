import { type Book, compileBook } from "../engine/decision/book.ts";
import type { Catalogue } from "../engine/decision/catalogue.ts";
import { once } from "./once.ts";
import { type AppraisalRequestSchema, appraisalRequest, vocabulary } from "./schemas/appraisalRequest.ts";
import { type ComparisonSchemas, comparisonSchemas } from "./schemas/comparisonRequest.ts";
import { type SellingRequestSchema, sellingRequest } from "./schemas/sellingRequest.ts";

/** What the app is built from; nothing in it comes from the platform. */
export interface Dependencies {
  /** Version of the service, as in package.json. */
  readonly version: string;
  /** Reads the tables; called once, at the first request that needs them. */
  readonly readCatalogue: () => Catalogue;
}

/** What the routes work with: made at first use and kept, so that an isolate starts at once. */
export interface Service {
  readonly version: string;
  readonly catalogue: () => Catalogue;
  readonly book: () => Book;
  readonly request: () => AppraisalRequestSchema;
  readonly comparison: () => ComparisonSchemas;
  readonly selling: () => SellingRequestSchema;
}

/** The service of the dependencies. */
export function serviceOf({ version, readCatalogue }: Dependencies): Service {
  const catalogue = once(readCatalogue);
  return {
    version,
    catalogue,
    book: once(() => compileBook(catalogue())),
    request: once(() => appraisalRequest(vocabulary(catalogue()))),
    comparison: once(() => comparisonSchemas(vocabulary(catalogue()))),
    selling: once(() => sellingRequest(vocabulary(catalogue()))),
  };
}
