import { describe, expect, test } from "vitest";
import { measure, median } from "./measure.ts";

describe("measure", () => {
  test("runs the candidates in turn, so that none has the machine to itself", async () => {
    const order: string[] = [];
    const note = (name: string) => ({ name, run: () => order.at(-1) !== name && order.push(name) });
    const timings = await measure([note("a"), note("b")], { rounds: 2, roundMilliseconds: 0.01 });
    expect(order).toEqual(["a", "b", "a", "b", "a", "b"]);
    expect(timings.map(({ name }) => name)).toEqual(["a", "b"]);
  });

  test("a round without a length is one run, so that the median is of single runs", async () => {
    let runs = 0;
    await measure([{ name: "count", run: () => (runs += 1) }], { rounds: 4, roundMilliseconds: 0 });
    expect(runs).toBe(5);
  });

  test("the median lies between the fastest and the slowest round", async () => {
    const [timing] = await measure([{ name: "sum", run: () => Promise.resolve(1) }], {
      rounds: 3,
      roundMilliseconds: 0.1,
    });
    expect(timing?.fastest).toBeGreaterThan(0);
    expect(timing?.median).toBeGreaterThanOrEqual(timing?.fastest ?? Number.NaN);
    expect(timing?.median).toBeLessThanOrEqual(timing?.slowest ?? Number.NaN);
  });
});

describe("median", () => {
  test.each([
    [[3, 1, 2], 2],
    [[4, 1, 3, 2], 2.5],
    [[7], 7],
    [[], Number.NaN],
  ])("of %j is %d", (values, middle) => {
    expect(median(values)).toBe(middle);
  });
});
