import { describe, expect, test } from "vitest";
import type { Appraisal } from "../../../dashboard/api/types.ts";
import { hardlyLooked } from "../../../dashboard/courses/standing.ts";
import { DEMO_FINDS } from "../../../dashboard/finds/demo.ts";
import { withGoal } from "../../../dashboard/finds/find.ts";
import { createApp } from "../../../worker/api/app.ts";
import { COURSES } from "../../../worker/engine/service/operation.ts";
import { readCatalogue } from "../../../worker/tables.ts";

const app = createApp({ version: "0", readCatalogue });

async function appraised(goal: number): Promise<Map<string, Appraisal>> {
  const answers = new Map<string, Appraisal>();
  for (const { id, body } of DEMO_FINDS) {
    const response = await app.request("/v1/appraisals", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(withGoal(body, goal)),
    });
    expect(response.status, id).toBe(200);
    answers.set(id, (await response.json()) as Appraisal);
  }
  return answers;
}

describe("the demo finds, as the API appraises them", () => {
  test.each([10, 12])(
    "show every course as an answer, and one that is stopped, at a goal of %i an hour",
    async (goal) => {
      const answers = [...(await appraised(goal)).values()];
      const stopped = answers.filter(({ decision }) => decision.stop !== null);
      const going = answers.filter(({ decision }) => decision.stop === null);
      expect(stopped).toHaveLength(1);
      expect(new Set(going.map(({ decision }) => decision.course))).toEqual(new Set(COURSES));
    },
  );

  test("leave out nothing of what was seen, and one of them is hardly looked at", async () => {
    const answers = [...(await appraised(10)).values()];
    expect(answers.flatMap(({ ignored }) => ignored)).toEqual([]);
    expect(answers.flatMap(({ mismatches }) => mismatches)).toEqual([]);
    expect(answers.filter(({ decision }) => decision.stop === null).filter(hardlyLooked)).toHaveLength(1);
  });
});
