import { describe, expect, test } from "vitest";
import type { HiddenFault } from "../../../dashboard/words/unseen.ts";
import { faultWords, historyWords, raisedWords, unseenTitle } from "../../../dashboard/words/unseen.ts";

const names = {
  check: (id: string) => ({ rust: "Frame rust depth (steel)", post: "Does the seatpost move?" })[id] ?? id,
  short: (_: string, level: string) => level.charAt(0).toUpperCase() + level.slice(1),
};
const post: HiddenFault = { check: "post", level: "stuck", probability: 0.31, prior: 0.048, raisedBy: [] };

describe("a fault that nobody looked for", () => {
  test("is told with its chance and the usual one", () => {
    expect(faultWords(post, names)).toBe("Stuck: 3 in 10; usually 1 in 20 for such a bike");
    expect(faultWords({ ...post, prior: 0.312 }, names)).toBe("Stuck: 3 in 10; as usual for such a bike");
  });

  test("is told of 100 where both chances would read the same and are not", () => {
    expect(faultWords({ ...post, prior: 0.27 }, names)).toBe(
      "Stuck: 31 in 100; usually 27 in 100 for such a bike",
    );
  });

  test("tells which findings raise its odds, and how far", () => {
    const raisedBy = [
      { check: "rust", level: "pitted", oddsFactor: 2.53 },
      { check: "post", level: "stiff", oddsFactor: 2.01 },
      { check: "rust", level: "holed", oddsFactor: 14.6 },
    ];
    expect(raisedWords({ raisedBy }, names)).toEqual([
      "Frame rust depth (steel): pitted raises the odds 2.5 times.",
      "Does the seatpost move? Stiff raises the odds 2 times.",
      "Frame rust depth (steel): holed raises the odds 15 times.",
    ]);
  });

  test("heads the panel where it is the likeliest", () => {
    expect(unseenTitle([post], names)).toBe(
      "Not looked at, and likeliest at fault: does the seatpost move? (stuck in 3 of 10)",
    );
    expect(unseenTitle([], names)).toBe("No likely fault left unseen");
  });
});

describe("what its past seems to be", () => {
  test("is told with the likely parts first, the others apart", () => {
    expect(historyWords({ weather: 0.68, mileage: 0.52, neglect: 0.31, crash: 0.04 })).toBe(
      "It looks as if it stood in the wet (7 in 10) and was ridden a lot (5 in 10). " +
        "Less likely: it was not looked after (3 in 10) or had a fall (1 in 20).",
    );
    expect(historyWords({ weather: 0.9, mileage: 0.8, neglect: 0.7, crash: 0.6 })).toBe(
      "It looks as if it stood in the wet (9 in 10), was ridden a lot (8 in 10), was not looked after (7 in 10) and had a fall (6 in 10).",
    );
  });

  test("stands out in nothing where no part of it is likelier than not", () => {
    expect(historyWords({ weather: 0.2, mileage: 0.3, neglect: 0.1, crash: 0.02 })).toBe(
      "Nothing in its past stands out: it was ridden a lot (3 in 10), stood in the wet (2 in 10), was not looked after (1 in 10) or had a fall (2 in 100).",
    );
  });

  test("is left out where the answer says nothing of it", () => {
    expect(historyWords({ weather: 0, mileage: 0, neglect: 0, crash: 0 })).toBeNull();
  });
});
