import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { exampleComparison } from "../worker/api/routes/exampleComparison.ts";
import { appraisalRequest, vocabulary } from "../worker/api/schemas/appraisalRequest.ts";
import { appraise } from "../worker/engine/decision/appraise.ts";
import { compileBook } from "../worker/engine/decision/book.ts";
import { compareFinds } from "../worker/engine/portfolio/compareFinds.ts";
import { readCatalogue } from "../worker/tables.ts";

const README = readFileSync(new URL("../README.md", import.meta.url), "utf8");
const [request, answer, set] = [...README.matchAll(/```json\n([\s\S]*?)```/g)].map(([, text]) =>
  JSON.parse(text!),
);
const catalogue = readCatalogue();
const parsed = appraisalRequest(vocabulary(catalogue)).parse(request);

/** Every figure and word that is printed, at its place in the real answer; figures to the cent. */
function expectPrinted(printed: unknown, real: unknown, path: string): void {
  if (typeof printed === "number") {
    expect(real, path).toBeTypeOf("number");
    expect(Math.abs((real as number) - printed), path).toBeLessThanOrEqual(0.005 + 1e-9);
  } else if (printed !== null && typeof printed === "object") {
    for (const [key, value] of Object.entries(printed)) {
      expectPrinted(value, (real as Record<string, unknown>)[key], `${path}/${key}`);
    }
    if (Array.isArray(printed)) expect((real as unknown[]).length, path).toBe(printed.length);
  } else {
    expect(real, path).toBe(printed);
  }
}

test("the README's worked example answers what it prints", () => {
  expectPrinted(answer, appraise(parsed, compileBook(catalogue)), "");
});

test("the README's set of finds is what the example of the document answers", () => {
  const { finds, budgets, workshop } = exampleComparison;
  const find = appraisalRequest(vocabulary(catalogue));
  const comparison = compareFinds(
    {
      currency: "EUR",
      finds: finds.map((one) => ({
        id: one.find.id,
        course: null,
        request: find.parse({ ...one, currency: "EUR", workshop }),
      })),
      budgets,
      objective: "netBenefit",
    },
    compileBook(catalogue),
  );
  expectPrinted(set, comparison, "");
});

test("the README opens with the job in one paragraph", () => {
  const [title, job] = README.split("\n\n");
  expect(title).toBe("# Spokeworth");
  expect(job).toContain("hobby mechanic");
  expect(job).not.toContain("\n#");
});

test("the README's two commands are the package's own", () => {
  const { scripts } = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8"));
  expect(README).toContain("npm ci && npm start");
  expect(README).toContain("&& npm test");
  expect(scripts).toHaveProperty("start");
  expect(scripts).toHaveProperty("test");
  expect(readFileSync(new URL("../.ci/run", import.meta.url), "utf8")).toContain("&& npm test");
});
