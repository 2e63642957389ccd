import { exampleRequest } from "../../worker/api/routes/exampleRequest.ts";
import { appraisalRequest, vocabulary } from "../../worker/api/schemas/appraisalRequest.ts";
import { appraise } from "../../worker/engine/decision/appraise.ts";
import { compileBook } from "../../worker/engine/decision/book.ts";
import { inspectFind } from "../../worker/engine/decision/inspectFind.ts";
import { valueFind } from "../../worker/engine/decision/valueFind.ts";
import { loadCatalogue } from "../../worker/tables/loadCatalogue.ts";
import { readCatalogue, SHIPPED_TABLES } from "../../worker/tables.ts";
import type { Bench } from "./bench.ts";

const catalogue = readCatalogue();
const book = compileBook(catalogue);
const schema = appraisalRequest(vocabulary(catalogue));
const half = schema.parse(exampleRequest);
/** Every check made and found sound. */
const looked = catalogue.inspection.checks.map(({ id, levels }) => [id, { level: levels[0]?.id }]);
const whole = schema.parse({ ...exampleRequest, observations: Object.fromEntries(looked) });
const answer = appraise(half, book);

export default {
  title: `one find in the engine, without a network (its answer: ${JSON.stringify(answer).length} characters)`,
  candidates: [
    { name: "the answer written as JSON and read again", run: () => JSON.parse(JSON.stringify(answer)) },
    { name: "the request checked", run: () => schema.parse(exampleRequest) },
    { name: "findings", run: () => inspectFind(half, book) },
    { name: "valuation", run: () => valueFind(half, book) },
    { name: "appraisal, half looked over", run: () => appraise(half, book) },
    { name: "appraisal, every check made and sound", run: () => appraise(whole, book) },
    { name: "once at the start: tables read and checked", run: () => loadCatalogue(SHIPPED_TABLES) },
    { name: "once at the start: book compiled", run: () => compileBook(catalogue) },
  ],
} satisfies Bench;
