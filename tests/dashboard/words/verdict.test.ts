import { describe, expect, test } from "vitest";
import { stopReason, verdict } from "../../../dashboard/words/verdict.ts";
import { appraisal, COURSES, closed, decided, open } from "../fixtures/appraisal.ts";

const told = {
  called: "the copper track bike",
  price: 40,
  nameOf: (id: string) => (id === "decide-crack" ? "Prove the line" : id),
};

describe("the verdict on a find", () => {
  test("is the advice, with what an hour earns and how sure that is", () => {
    expect(verdict(appraisal(), 12, told)).toBe(
      "Sell the copper track bike as found: €14 an hour, likely between €6 and €22.",
    );
  });

  test("to leave it says that work loses money, where it does", () => {
    const courses = [open("restore", -40, 8), open("make-safe", -10, 5), open("leave", 0, 0)];
    const answer = appraisal({ courses, decision: decided({ course: "leave", walkAwayPrice: 0 }) });
    expect(verdict(answer, 12, told)).toBe("Leave the copper track bike: any work here loses money.");
  });

  test("to leave it never says that it bears a price that reads as nothing", () => {
    const answer = appraisal({ decision: decided({ course: "leave", walkAwayPrice: 0.3 }) });
    expect(verdict(answer, 30, told)).not.toContain("bears");
  });

  test("to leave it says what it bears, where only the price is too high", () => {
    const answer = appraisal({ decision: decided({ course: "leave", walkAwayPrice: 22 }) });
    expect(verdict(answer, 30, told)).toBe(
      "Leave the copper track bike: it bears €22 at most, and €40 is asked.",
    );
  });

  test("to leave it says that nothing earns the goal, where work earns something", () => {
    const answer = appraisal({ decision: decided({ course: "leave", walkAwayPrice: null }) });
    expect(verdict(answer, 30, told)).toBe(
      "Leave the copper track bike: nothing here earns your €30 an hour.",
    );
  });

  test("with no other course open says so", () => {
    const courses = [
      ...COURSES.filter(({ course }) => course !== "leave").map(({ course }) => closed(course)),
      open("leave", 0, 0),
    ];
    const answer = appraisal({ courses, decision: decided({ course: "leave", walkAwayPrice: 0 }) });
    expect(verdict(answer, 12, told)).toBe("Leave the copper track bike: no other course is open.");
  });

  test("names the look that is worth more than deciding now", () => {
    const answer = appraisal({ decision: decided({ lookFirst: "decide-crack" }) });
    expect(verdict(answer, 12, told)).toBe(
      "Look first: prove the line before anything else on the copper track bike.",
    );
  });

  test("that stops carries the reason and no figure", () => {
    const cautions = [
      {
        id: "serial",
        title: "Serial number",
        kind: "hard",
        text: "",
        because: "Serial number: Filed or drilled",
        bears: { checks: ["serial"], operations: [] },
      },
    ] as const;
    const answer = appraisal({
      cautions,
      courses: [],
      decision: decided({ stop: "serial", course: "leave" }),
    });
    expect(verdict(answer, 12, told)).toBe("Stopped. Serial number: filed or drilled.");
  });

  test("that stops by the kind of bike takes the caution's title", () => {
    const cautions = [
      {
        id: "e-bike",
        title: "Electric bicycles are out of scope",
        kind: "hard",
        text: "",
        because: "This kind of bike",
        bears: { checks: [], operations: [] },
      },
    ] as const;
    const stop = { cautions, decision: decided({ stop: "e-bike" }) };
    expect(stopReason(stop)).toBe("electric bicycles are out of scope");
  });
});
