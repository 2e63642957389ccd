import { describe, expect, test } from "vitest";
import { changeWords, courseFacts, missWords } from "../../../dashboard/words/courseFacts.ts";
import { stopWords } from "../../../dashboard/words/stopLimit.ts";
import { COURSES, closed, open } from "../fixtures/appraisal.ts";

describe("what stands under the dots of a course", () => {
  test("is its margin, its hours with their range, how often it loses and misses the goal, and when it is sold for how much", () => {
    const course = open("make-safe", 76, 5.6, {
      hours: { mean: 5.6, p10: 4.2, p50: 5.5, p90: 7.1 },
      width: 200,
      elapsedDays: 36,
      sale: { weeks: 4.1, takings: 251.6 },
    });
    expect(courseFacts(course, [course], true, 12, "EUR")).toBe(
      "€76 for 5.6 h, likely 4.2 to 7.1\u00a0· loses in 2 of 20\u00a0· misses your €12 in 3 of 10\u00a0· about 5 weeks until sold, taking about €250\u00a0· best after paying for your time",
    );
  });

  test("keeps silent of loss and goal for leaving, and of all for a closed course", () => {
    const leave = COURSES.find(({ course }) => course === "leave")!;
    expect(courseFacts(leave, COURSES, false, 12, "EUR")).toBe("€0, no hours");
    expect(courseFacts(closed("restore"), COURSES, false, 12, "EUR")).toBe("");
    expect(missWords(closed("restore"), 12, "EUR")).toBe("");
  });

  test("tells the right to change course only where it is worth a whole unit", () => {
    const worth = (rightToChange: number | null) =>
      changeWords(open("restore", 70, 8, { rightToChange }), "EUR");
    expect(worth(9.2)).toBe("You can still change course after opening it up; worth €9.");
    expect(worth(0.5)).toBe("You can still change course after opening it up; worth €1.");
    expect(worth(0.4)).toBeNull();
    expect(worth(null)).toBeNull();
  });
});

describe("when to stop trying", () => {
  const limit = {
    operation: "free-seatpost",
    name: "Free a seized seatpost",
    minutes: 40.2,
    releaseChance: 0.71,
    fallback: -34.6,
  };

  test("is a time, the chance of success by then, and what comes after", () => {
    expect(stopWords(limit, "EUR")).toBe(
      "Stop trying to free a seized seatpost after 40 min: by then it has come in 7 of 10; " +
        "after that the cheapest way on costs about €35, your time paid.",
    );
  });

  test("says so where little is lost without it", () => {
    expect(stopWords({ ...limit, fallback: 0 }, "EUR")).toMatch(/; without it you lose next to nothing\.$/);
  });
});
