import { describe, expect, test } from "vitest";
import { curesOf, owedWords, readyRows } from "../../../dashboard/words/ready.ts";
import {
  decideAgain,
  gainWords,
  openTitle,
  standTitle,
  stillOwed,
  turnedWords,
  worthWords,
} from "../../../dashboard/words/stand.ts";
import { appraisal, decided } from "../fixtures/appraisal.ts";

const finding = (check: string, severity: 0 | 2, curedBy: readonly string[] = []) =>
  ({ check, severity, curedBy }) as never;
const looked = { made: 31, applicable: 40, groups: [] };

describe("the heading of the stand", () => {
  test("counts faults by check, cured ones apart, and what is not made", () => {
    const title = (findings: never[], seen = looked) => standTitle(appraisal({ findings, looked: seen }));
    expect(title([])).toBe("No fault found in the 31 checks made; 9 not made");
    expect(title([finding("chain", 2), finding("chain", 2), finding("headset", 2), finding("hubs", 0)])).toBe(
      "Two faults found; 31 checks made; 9 not made",
    );
    expect(title([finding("chain", 2, ["new-chain"])])).toMatch(/^No fault found/);
    expect(title([], { ...looked, made: 0 })).toBe("Not looked at yet: 40 checks to make");
    expect(title([finding("chain", 2)], { ...looked, made: 1, applicable: 1 })).toBe(
      "One fault found; 1 check made",
    );
  });
});

describe("looks", () => {
  test("say what they are worth", () => {
    expect(gainWords(1.2961, "EUR")).toBe("€1.30 a minute");
    expect(worthWords(23.91, "EUR")).toBe("about €24");
    expect(worthWords(0.3, "EUR")).toBe("less than €1");
    expect(openTitle(0, false)).toBe("No check is open");
    expect(openTitle(3, false)).toBe("Still open, none worth its minute");
    expect(stillOwed(1)).toMatch(/^One look is still owed/);
    expect(stillOwed(4)).toMatch(/^Four looks are still owed/);
  });

  test("say what an answer turned: the course, the most to pay, or nothing", () => {
    const before = appraisal();
    expect(turnedWords(before, before)).toBe("");
    const after = appraisal({ decision: decided({ course: "restore", walkAwayPrice: 41 }) });
    expect(turnedWords(before, after)).toBe("Now: restore it. Most to pay up from €30 to €41.");
    expect(turnedWords(after, before)).toBe("Now: sell it as found. Most to pay down from €41 to €30.");
    expect(turnedWords(before, appraisal({ decision: decided({ walkAwayPrice: null }) }))).toBe("");
  });
});

describe("work and readiness", () => {
  test("where the course may change, what that right is worth, and in short the second time", () => {
    expect(decideAgain({ rightToChange: 9.2 }, "EUR", false)).toMatch(/that right is worth about €9\.$/);
    expect(decideAgain({ rightToChange: 0.2 }, "EUR", false)).not.toContain("€");
    expect(decideAgain({ rightToChange: null }, "EUR", true)).toBe("You can still change course after this.");
  });

  test("papers bear on the sale, all else on the ride", () => {
    const rows = readyRows(
      { ready: false, blocking: ["chain", "serial"], owed: ["ownership", "headset"] },
      (id) => id === "serial" || id === "ownership",
    );
    expect(rows).toEqual({
      ride: { blocking: ["chain"], owed: ["headset"] },
      sale: { blocking: ["serial"], owed: ["ownership"] },
    });
  });

  test("a block says which job clears it, that one did, that it goes with its cause, or that it stays", () => {
    const names = { operation: () => "New pads", isPaper: (check: string) => check === "serial" };
    const jobs = [
      { name: "New pads", because: ["pads"] },
      { name: "Clean and centre", because: ["pads", "caliper"] },
    ];
    expect(curesOf("pads", [], jobs, [], true, names)).toBe("To do: new pads and clean and centre.");
    expect(curesOf("pads", ["new-pads"], [], [], true, names)).toBe(
      "Done: new pads. Look again and answer it anew.",
    );
    expect(curesOf("brake-function", [], jobs, [], true, names)).toMatch(/^No job of its own/);
    expect(curesOf("frame", [], [], [], false, names)).toMatch(/stays not roadworthy/);
    // A removed serial number is never sold, not even as not roadworthy.
    for (const rideable of [true, false])
      expect(curesOf("serial", [], [], [], rideable, names)).toBe(
        "No work clears this. Not to be sold while it stands.",
      );
    expect(curesOf("pads", [], [], jobs, false, names)).toBe(
      "The plan in sight leaves it. To make it safe: new pads and clean and centre.",
    );
    expect(owedWords({ minutes: 2, tools: ["torch"], where: "spot" })).toBe("Look: 2 min, torch.");
    expect(owedWords({ minutes: 8, tools: [], where: "dismantled" })).toBe(
      "Look: 8 min, no tools, once it is apart.",
    );
  });
});
