import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { type Compared, comparedOf } from "../../../dashboard/compare/compared.ts";
import { comparisonCsv } from "../../../dashboard/compare/comparisonCsv.ts";
import { describedRows } from "../../../dashboard/compare/described.ts";
import { measureRows } from "../../../dashboard/compare/measures.ts";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import { withGoal } from "../../../dashboard/finds/find.ts";
import { appraised, referenceOf } from "../fixtures/service.ts";

const known = await referenceOf();
const GOAL = 12;
const finds: Compared[] = [];
for (const find of DEMO_FINDS) {
  const { price, paid = false } = find.body.find.purchase ?? {};
  const answer = await appraised(withGoal(find.body, GOAL));
  finds.push(comparedOf(find, answer, { goal: GOAL, price, paid, ownParts: new Set() }));
}
const stoppedAt = finds.findIndex(({ stopped }) => stopped);

describe("the rows of the comparison, from answers of the API", () => {
  const rows = measureRows(finds, known);

  test("say something of every find that is not stopped, and nothing of one that is", () => {
    expect(stoppedAt).toBeGreaterThanOrEqual(0);
    for (const { measure, cells } of rows) {
      cells.forEach((cell, i) => {
        if (i === stoppedAt) expect(cell, measure.id).toBeNull();
        else expect(cell?.strong, `${measure.id} of ${finds[i]?.find.name}`).toMatch(/\w/);
      });
    }
  });

  test("hold each figure within its range, and no word that is none", () => {
    for (const { cells } of rows) {
      for (const cell of cells) {
        expect(`${cell?.strong} ${cell?.rest}`).not.toMatch(/NaN|EUR|!/);
        if (cell === null || cell.value === null) continue;
        expect(cell.low).toBeLessThanOrEqual(cell.value);
        expect(cell.high).toBeGreaterThanOrEqual(cell.value);
      }
    }
  });

  test("name the likeliest fault nobody looked for, with the minutes of its check", () => {
    const cells = rows.find(({ measure }) => measure.id === "unknown")?.cells;
    finds.forEach(({ appraisal, stopped }, i) => {
      const [likeliest] = appraisal.hidden;
      if (stopped || likeliest === undefined || appraisal.decision.lookFirst !== null) return;
      const check = known.checks.find(({ id }) => id === likeliest.check);
      expect(cells?.[i]?.strong).toBe(check?.name);
      expect(cells?.[i]?.rest).toContain(`${check?.minutes} min to check`);
    });
  });

  test("owe looks by count and the first names", () => {
    const cells = rows.find(({ measure }) => measure.id === "owed")?.cells;
    const racer = finds.findIndex(({ find }) => find.id === "orange-racer");
    expect(cells?.[racer]).toMatchObject({
      strong: "One fault to cure, seven looks owed",
      rest: expect.stringMatching(/ and 5 more$/),
    });
  });
});

describe("the description, differences first", () => {
  const bodies = finds.map(({ find }) => find.body);

  test("splits what differs from what is the same, and leaves out what nobody said", () => {
    const { apart, same } = describedRows(bodies.slice(0, 2), known);
    expect(apart[0]).toMatchObject({ label: "Kind", values: ["Hybrid", "Track or single-speed"] });
    expect(same).toContainEqual({ label: "Kept", values: ["Indoors", "Indoors"], main: true });
    const labels = [...apart, ...same].map(({ label }) => label);
    expect(labels).not.toContain("Fixed gear");
    expect(new Set(labels).size).toBe(labels.length);
  });

  test("what was said of one alone is a difference", () => {
    const { apart } = describedRows(bodies.slice(0, 2), known);
    expect(apart).toContainEqual({ label: "Sprockets at the back", values: ["8", null], main: false });
  });

  test("a find and its copy are described alike", () => {
    expect(describedRows([bodies[0]!, bodies[0]!], known).apart).toEqual([]);
  });
});

describe("the comparison as a file", () => {
  const read = (text: string) =>
    Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
  const text = comparisonCsv(finds, GOAL, known);
  const { data, errors } = read(text);

  test("holds a row a find, every line ended by CR LF, and reads without a fault (RFC 4180)", () => {
    expect(errors).toEqual([]);
    expect(data.map(({ find }) => find)).toEqual(finds.map(({ find }) => find.name));
    expect(text.endsWith("\r\n")).toBe(true);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });

  test("names unit and currency in its header, the find first, then whether it is invented", () => {
    expect(text).toMatch(/^find,invented,decision,/);
    const header = Object.keys(data[0] ?? {});
    expect(header).toContain("margin per hour (EUR/h)");
    expect(header).toContain("your hours (h)");
    expect(new Set(header).size).toBe(header.length);
    expect(data.every(({ invented }) => invented === "yes")).toBe(true);
  });

  test("reads back to the figures, with a decimal point and a plain minus", () => {
    finds.forEach(({ row }, i) => {
      if (row === null) return;
      expect(Number(data[i]?.["margin per hour (EUR/h)"])).toBeCloseTo(row.rate, 3);
      expect(Number(data[i]?.["margin per hour, 1 in 10 below (EUR/h)"])).toBeCloseTo(row.p10, 3);
    });
    expect(text).toMatch(/,-\d+\.\d+,/);
  });

  test("gives a stopped find its reason and no figure", () => {
    const row = data[stoppedAt] ?? {};
    expect(row.decision).toBe("Stopped");
    expect(row["stopped because"]).toMatch(/serial number/);
    const figures = Object.entries(row).filter(([name]) => /EUR|\(h\)|chance|days|already paid/.test(name));
    expect(figures.length).toBeGreaterThan(10);
    expect(figures.every(([, value]) => value === "")).toBe(true);
  });

  test.each(["=1+1", "+49", "-5", "@home", 'a "b", c'])(
    "a find called %s stays text (OWASP, CSV Injection: begins with =, +, -, @)",
    (name) => {
      const [first] = finds;
      if (first === undefined) throw new Error("no find");
      const odd = comparisonCsv([{ ...first, find: { ...first.find, name, invented: false } }], GOAL, known);
      expect(read(odd).data[0]).toMatchObject({ invented: "no" });
      expect(read(odd).data[0]?.find?.replace(/^'/, "")).toBe(name);
      expect(odd.split("\r\n")[1]).not.toMatch(/^"?[=+\-@]/);
    },
  );
});
