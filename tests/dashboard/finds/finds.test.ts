import { describe, expect, test } from "vitest";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import { type Find, withGoal } from "../../../dashboard/finds/find.ts";
import { byRate, chartSentence, rowLines, rowOf } from "../../../dashboard/finds/row.ts";
import { appraisal, decided } from "../fixtures/appraisal.ts";

const find = (name: string): Find => ({
  id: name,
  name,
  called: name,
  where: "",
  line: "",
  invented: true,
  body: { find: {} } as Find["body"],
});

describe("a row of the chart", () => {
  test("beats the goal only where it is worth doing and earns more", () => {
    expect(rowOf(find("a"), appraisal(), 12)?.beats).toBe(true);
    expect(rowOf(find("a"), appraisal(), 15)?.beats).toBe(false);
    expect(rowOf(find("a"), appraisal({ decision: decided({ course: "leave" }) }), 12)?.beats).toBe(false);
  });

  test("of a find to leave tells the best other course", () => {
    const row = rowOf(find("a"), appraisal({ decision: decided({ course: "leave" }) }), 12);
    expect(row).toMatchObject({ verdict: "leave", shown: { course: "sell-as-found" } });
    expect(rowLines(row!, 12)[0]).toBe("Leave; best other: sell as found");
  });

  test("does not exist for a stopped find", () => {
    expect(rowOf(find("a"), appraisal({ decision: decided({ stop: "serial" }) }), 12)).toBeNull();
  });

  test("the best earner comes first, and the chart says best, worst and what crosses the goal", () => {
    const good = rowOf(find("good"), appraisal(), 12)!;
    const poor = { ...good, find: find("poor"), rate: 3, p10: 1, p90: 5 };
    const rows = [poor, good].sort(byRate);
    expect(chartSentence(rows, "Margin per hour by find.", 12)).toBe(
      "Margin per hour by find. Best: good, €14 an hour, likely between €6 and €22. " +
        "Worst: poor, €3 an hour, likely between €1 and €5. 1 of 2 ranges cross the goal of €12.",
    );
  });
});

describe("the demo finds", () => {
  test("are eight, each with a name, a place and a line, and no goal of their own", () => {
    expect(DEMO_FINDS).toHaveLength(8);
    expect(new Set(DEMO_FINDS.map(({ id }) => id)).size).toBe(8);
    for (const { name, called, where, line, invented, body } of DEMO_FINDS) {
      expect(invented).toBe(true);
      for (const text of [name, where, line]) expect(text).not.toBe("");
      expect(called).toBe(`the ${name.charAt(0).toLowerCase()}${name.slice(1)}`);
      expect(body.workshop?.hourlyGoal).toBeUndefined();
    }
  });

  test("are asked with the user's goal, and what else they say about the workshop", () => {
    const body = withGoal({ find: {}, workshop: { month: 4 } } as Find["body"], 15);
    expect(body.workshop).toEqual({ month: 4, hourlyGoal: 15 });
  });
});
