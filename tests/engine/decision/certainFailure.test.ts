import { expect, test } from "vitest";
import { appraise } from "../../../worker/engine/decision/appraise.ts";
import { compileBook } from "../../../worker/engine/decision/book.ts";
import { readCatalogue } from "../../../worker/tables.ts";
import { lookedOver } from "./lookedOver.ts";

/** Paths of the numbers that are none. */
function holes(value: unknown, path = ""): readonly string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, one]) => holes(one, `${path}/${key}`));
}

test("a job that ends the frame for certain, as the tables may say, leaves no hole in the answer", () => {
  const catalogue = readCatalogue();
  const operations = catalogue.service.operations.map((operation) =>
    operation.failure?.ends === "frame"
      ? { ...operation, failure: { ...operation.failure, chances: [{ when: [], at: [], probability: 1 }] } }
      : operation,
  );
  const book = compileBook({ ...catalogue, service: { ...catalogue.service, operations } });
  const unseen = catalogue.inspection.checks.map(({ id }) => id);
  for (const found of [{ unseen }, { unseen, found: { "rear-alignment": "out" } }])
    expect(holes(appraise(lookedOver(found), book))).toEqual([]);
});
