import { describe, expect, test } from "vitest";
import { allowedError, playAll } from "./compare.ts";

/**
 * The engine's distribution of each course against one bike after another played step by step by code that shares only the tables with it. Going rates are
 * given: the regression is proved elsewhere. `npm run proof` plays more, and tells the hours and the rates as well.
 */

const BIKES = 100_000;

describe("every open course of the invented finds and the worked cases, played a hundred thousand times", () => {
  const figures = playAll(BIKES, 20_261_126, "promised");

  test.each([
    ["mean of the margin", "margin mean"],
    ["mean of the hours", "hours mean"],
    ["chance of a loss", "loss"],
    ["10 % point of the margin", "margin 10 %"],
    ["50 % point of the margin", "margin 50 %"],
    ["90 % point of the margin", "margin 90 %"],
  ])("%s is what was played", (_, what) => {
    const told = figures.filter((figure) => figure.what === what);
    expect(told.length).toBeGreaterThan(50);
    const off = told.filter(
      (figure) => Math.abs(figure.error) > allowedError(figure, 0)! + 4 * figure.standardError,
    );
    expect(off.map(({ course, told, played }) => `${course}: told ${told}, played ${played}`)).toEqual([]);
  });
});
