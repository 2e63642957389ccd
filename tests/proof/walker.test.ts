import { afterAll, describe, expect, test } from "vitest";
import { allowedError, type Figure, outstanding, playAll } from "../engine/walker/compare.ts";

/**
 * Every open course of the invented finds and the worked cases against ten million bikes each, played one step after another by code that shares only the
 * tables with the engine: some 600 million bikes, about twenty minutes. What the draws themselves may be off by is no excuse here.
 */
const BIKES = 10_000_000;

/** In standard deviations. A mean of so many draws is itself off by a three-thousandth of one. */
const ALLOWED_MEAN = 0.005;

describe("every open course, played ten million times", () => {
  const figures = playAll(BIKES, 20_261_127);

  afterAll(() => {
    const known = figures.filter((one) => outstanding(one) !== null && allowedError(one, 0) !== null);
    console.info(
      `Known to be off (${new Set(known.map(({ course }) => course)).size} courses):\n${largest(known)}`,
    );
    console.info(
      `Largest errors of the others, in standard deviations (chances as they are):\n${largest(figures.filter((one) => outstanding(one) === null))}`,
    );
  });

  test.each([...new Set(figures.filter((one) => allowedError(one, 0) !== null).map(({ what }) => what))])(
    "%s within half a hundredth of a standard deviation",
    (what) => {
      const off = figures.filter(
        (one) => one.what === what && Math.abs(one.error) > allowedError(one, ALLOWED_MEAN)!,
      );
      expect(off.map(({ course, told, played }) => `${course}: told ${told}, played ${played}`)).toEqual([]);
    },
  );
});

/** By figure: how far it is off at most, where, and off on average. */
function largest(figures: readonly Figure[]): string {
  const kinds = [...new Set(figures.map(({ what }) => what))];
  return kinds
    .map((kind) => {
      const all = figures.filter(({ what }) => what === kind);
      const worst = all.reduce((a, b) => (Math.abs(b.error) > Math.abs(a.error) ? b : a));
      const average = all.reduce((sum, { error }) => sum + Math.abs(error), 0) / all.length;
      return `${kind.padEnd(12)} ${worst.error.toFixed(4).padStart(8)} (${worst.course}: told ${worst.told.toFixed(3)}, played ${worst.played.toFixed(3)}), ${average.toFixed(4)} on average`;
    })
    .join("\n");
}
