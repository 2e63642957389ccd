import { vocabularyOf } from "../../../dashboard/ownPrices/vocabulary.ts";
import { reference } from "../../../worker/api/reference/reference.ts";
import { readCatalogue } from "../../../worker/tables.ts";

/** The words of the catalogue that ships. */
export const VOCABULARY = vocabularyOf(reference(readCatalogue()));
export const TODAY = "2026-06-15";
