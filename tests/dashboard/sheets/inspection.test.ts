import { describe, expect, test } from "vitest";
import { applicable, settled } from "../../../dashboard/checks/applies.ts";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import { inspectionSheet, NOTHING_SEEN, toolsFor } from "../../../dashboard/sheets/inspection.ts";
import { appraised, referenceOf } from "../fixtures/service.ts";

const known = await referenceOf();
const plum = DEMO_FINDS.find(({ id }) => id === "plum-hybrid")!.body;
const answer = await appraised(plum);
const seen = {
  observations: plum.observations ?? {},
  findings: answer.findings,
  owed: answer.readiness.owed,
};
const rowsOf = (groups: ReturnType<typeof inspectionSheet>) => groups.flatMap(({ rows }) => rows);
const row = (id: string) =>
  rowsOf(inspectionSheet(known, plum.find, seen, "mm")).find((one) => one.id === id)!;

describe("an inspection sheet", () => {
  test("holds each check that applies once, in the catalogue's order within its group", () => {
    const groups = inspectionSheet(known, plum.find, NOTHING_SEEN, "mm");
    const applies = applicable(known.checks, settled(plum.find, known.attributeDefaults));
    expect(rowsOf(groups)).toHaveLength(applies.length);
    expect(rowsOf(groups)).toHaveLength(answer.looked.applicable);
    for (const { rows } of groups) {
      const places = rows.map(({ id }) => known.checks.findIndex((check) => check.id === id));
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }
  });

  test("a mark that sets a level which stops riding stops it too", () => {
    const mark = (check: string, flag: string) => row(check).levels.find(({ id }) => id === flag);
    expect(mark("rim-sidewall", "wear_mark_gone")).toMatchObject({ stops: true });
    expect(mark("brake-pads", "hard_or_glazed")).toMatchObject({ stops: false });
  });

  test("is blank where nothing was seen", () => {
    for (const one of rowsOf(inspectionSheet(known, plum.find, NOTHING_SEEN, "mm"))) {
      expect(one).toMatchObject({ made: false, owed: false });
      expect(one.levels.flatMap(({ ticked }) => ticked)).toEqual([]);
      expect(one.blanks.map(({ filled }) => filled)).toEqual(one.blanks.map(() => ({})));
    }
  });

  test("ticks what was seen, on the bike or at its wheel, and what a measurement came to", () => {
    const ticked = (id: string) => row(id).levels.filter((level) => level.ticked.length > 0);
    expect(ticked("frame-cracks")).toMatchObject([{ id: "none", ticked: ["bike"] }]);
    // One answer for both wheels is ticked at both.
    expect(ticked("inner-cable")).toMatchObject([{ id: "frayed", ticked: ["front", "rear"], stops: true }]);
    expect(row("rear-alignment").blanks[0]).toMatchObject({ unit: "mm", filled: { bike: "42" } });
    expect(ticked("rear-alignment")).toMatchObject([{ id: "true", ticked: ["bike"] }]);
    expect(rowsOf(inspectionSheet(known, plum.find, seen, "mm")).filter(({ made }) => made)).toHaveLength(
      answer.looked.made,
    );
  });

  test("a tyre's marking makes the check of its size, as it does for the answer", async () => {
    const find = { ...plum.find, tyreMarking: "37-622" };
    const { "tyre-size": _, ...observations } = seen.observations as Record<string, never>;
    const marked = await appraised({ ...plum, find, observations });
    const then = { observations, findings: marked.findings, owed: marked.readiness.owed };
    const rows = rowsOf(inspectionSheet(known, find, then, "mm"));
    expect(rows.find(({ id }) => id === "tyre-size")).toMatchObject({ made: true });
    expect(rows.filter(({ made }) => made)).toHaveLength(marked.looked.made);
  });

  test("is written in inches for who measures in inches, but for sizes that are named in millimetres", () => {
    const inches = rowsOf(inspectionSheet(known, plum.find, seen, "in"));
    const of = (id: string) => inches.find((one) => one.id === id)!;
    expect(of("rear-alignment").blanks[0]).toMatchObject({ unit: "in", filled: { bike: "1.654" } });
    expect(of("rear-alignment").levels[1]!.words).toContain("0.079 to 0.157 in");
    expect(of("tyre-size").blanks[0]).toMatchObject({ unit: "mm" });
  });

  test("marks what is owed as the answer does", () => {
    const owed = rowsOf(inspectionSheet(known, plum.find, { ...seen, owed: ["hub-cones"] }, "mm")).filter(
      (one) => one.owed,
    );
    expect(owed.map(({ id }) => id)).toEqual(["hub-cones"]);
  });

  test("leaves out what does not apply to another kind of bike, and names each tool once", () => {
    const carbon = rowsOf(inspectionSheet(known, { frameMaterial: "carbon" }, NOTHING_SEEN, "mm")).map(
      ({ id }) => id,
    );
    expect(carbon).toContain("carbon-damage");
    expect(carbon).not.toContain("frame-cracks");
    const tools = toolsFor(known, inspectionSheet(known, plum.find, NOTHING_SEEN, "mm"));
    expect(tools).toContain("torch");
    expect(new Set(tools).size).toBe(tools.length);
  });
});
