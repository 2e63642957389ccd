import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  listParts,
  type NotListed,
  type PartsTerms,
  type PieceThere,
} from "../../../worker/engine/valuation/partsList.ts";

const piece = (id: string, price: number, more: Partial<PieceThere> = {}): PieceThere => ({
  id,
  name: id,
  price,
  sells: 0.5,
  minutes: 15,
  chanceUsable: 1,
  barred: null,
  lookFirst: [],
  ...more,
});
/** A minute is worth 0.2: 15 minutes want 3. */
const TERMS: PartsTerms = { netShare: 0.9, minuteWorth: 0.2, most: 7, fixedCost: 0 };
const ids = (list: ReturnType<typeof listParts>) =>
  list.pieces.filter(({ listed }) => listed).map((one) => one.piece);

describe("a list of pieces, by hand", () => {
  test("30 x 0.5 x 0.8 usable is 12, less 1.20 fee and post: 10.80; the piece of 6 brings 2.70 for 3 of time", () => {
    const list = listParts([piece("small", 6), piece("wheels", 30, { chanceUsable: 0.8 })], TERMS);
    expect(ids(list)).toEqual(["wheels"]);
    expect(list.pieces[0]).toMatchObject({ price: 30, chanceUsable: 0.8, chanceSold: 0.5, minutes: 15 });
    expect(list.pieces[0]!.fee).toBeCloseTo(1.2, 12);
    expect(list.pieces[0]!.expected).toBeCloseTo(10.8, 12);
    expect(list.pieces[1]).toMatchObject({ listed: false, reason: "not-worth-its-minutes" });
    expect(list).toMatchObject({ minutes: 15 });
    expect(list.gross).toBeCloseTo(24, 12);
    expect(list.takings).toBeCloseTo(10.8, 12);
  });

  test("what is barred is never listed and says why; the eighth that pays is left for want of room", () => {
    const reasons: NotListed[] = ["frame-blocked", "crash-exposed", "spoiled"];
    const barred = reasons.map((reason) => piece(reason, 1000, { barred: reason }));
    const paying = Array.from({ length: 8 }, (_, n) => piece(`p${n}`, 20 + n));
    const list = listParts([...barred, ...paying], TERMS);
    expect(ids(list)).toEqual(["p7", "p6", "p5", "p4", "p3", "p2", "p1"]);
    const reason = (id: string) => list.pieces.find((one) => one.piece === id)!.reason;
    expect(reasons.map(reason)).toEqual(reasons);
    expect(reason("p0")).toBe("enough-listed");
  });

  test("nothing is listed where all together do not pay what is due once", () => {
    // Each leaves 9 - 3 = 6.
    const pieces = [piece("a", 20), piece("b", 20)];
    expect(ids(listParts(pieces, { ...TERMS, fixedCost: 11.9 }))).toEqual(["a", "b"]);
    expect(listParts(pieces, { ...TERMS, fixedCost: 12.1 })).toMatchObject({
      gross: 0,
      takings: 0,
      minutes: 0,
    });
  });

  test("no pieces make an empty list", () => {
    expect(listParts([], TERMS)).toEqual({ pieces: [], gross: 0, takings: 0, minutes: 0 });
  });
});

const chance = fc.double({ min: 0, max: 1, noNaN: true });
const anyPiece = fc
  .record({
    price: fc.double({ min: 0, max: 100, noNaN: true }),
    sells: chance,
    chanceUsable: chance,
    minutes: fc.integer({ min: 5, max: 40 }),
    barred: fc.option(fc.constantFrom<NotListed>("spoiled", "frame-blocked", "crash-exposed"), { freq: 4 }),
  })
  .map((one) => piece("", one.price, one));
const anyPieces = fc
  .array(anyPiece, { maxLength: 11 })
  .map((all) => all.map((one, n) => ({ ...one, id: `p${n}`, name: `p${n}` })));
const anyTerms = fc.record({
  netShare: chance,
  minuteWorth: fc.double({ min: 0, max: 1, noNaN: true }),
  most: fc.integer({ min: 1, max: 7 }),
  fixedCost: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 60, noNaN: true })),
});
const RUNS = { seed: 20261125, numRuns: 400 };

/** Takings less time and what is due once: over every choice of at most so many pieces. */
function bestOfAll(pieces: readonly PieceThere[], terms: PartsTerms): number {
  let best = 0;
  for (let mask = 1; mask < 1 << pieces.length; mask++) {
    const chosen = pieces.filter((_, n) => mask & (1 << n));
    if (chosen.length > terms.most || chosen.some(({ barred }) => barred !== null)) continue;
    const worth = chosen.reduce(
      (sum, one) =>
        sum + one.price * one.chanceUsable * one.sells * terms.netShare - one.minutes * terms.minuteWorth,
      -terms.fixedCost,
    );
    best = Math.max(best, worth);
  }
  return best;
}
const worthOf = ({ takings, minutes }: ReturnType<typeof listParts>, terms: PartsTerms) =>
  minutes === 0 ? 0 : takings - minutes * terms.minuteWorth - terms.fixedCost;

describe("laws of the list", () => {
  test("no choice of at most so many pieces leaves more (every subset tried)", () => {
    fc.assert(
      fc.property(anyPieces, anyTerms, (pieces, terms) => {
        expect(worthOf(listParts(pieces, terms), terms)).toBeCloseTo(bestOfAll(pieces, terms), 9);
      }),
      RUNS,
    );
  });

  test("a higher goal never lists more", () => {
    fc.assert(
      fc.property(anyPieces, anyTerms, fc.double({ min: 0, max: 1, noNaN: true }), (pieces, terms, more) => {
        const dearer = { ...terms, minuteWorth: terms.minuteWorth + more };
        expect(ids(listParts(pieces, dearer)).length).toBeLessThanOrEqual(
          ids(listParts(pieces, terms)).length,
        );
      }),
      RUNS,
    );
  });

  test("a piece of lower price, or barred, never raises what the list leaves", () => {
    fc.assert(
      fc.property(anyPieces, anyTerms, fc.nat(), chance, fc.boolean(), (pieces, terms, at, left, bar) => {
        const worse = pieces.map((one, n): PieceThere => {
          if (n !== at % pieces.length) return one;
          return { ...one, price: one.price * left, barred: bar ? "spoiled" : one.barred };
        });
        expect(worthOf(listParts(worse, terms), terms)).toBeLessThanOrEqual(
          worthOf(listParts(pieces, terms), terms) + 1e-9,
        );
      }),
      RUNS,
    );
  });

  test("the sums are those of the listed rows, and each row says why it is not one", () => {
    fc.assert(
      fc.property(anyPieces, anyTerms, (pieces, terms) => {
        const list = listParts(pieces, terms);
        expect(list.pieces).toHaveLength(pieces.length);
        const rows = list.pieces.filter(({ listed }) => listed);
        expect(rows.length).toBeLessThanOrEqual(terms.most);
        expect(rows.reduce((sum, { expected }) => sum + expected, 0)).toBeCloseTo(list.takings, 9);
        expect(rows.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(list.minutes);
        for (const { listed, reason, price, chanceUsable, chanceSold, fee, expected } of list.pieces) {
          expect(reason === null).toBe(listed);
          expect(price * chanceUsable * chanceSold - fee).toBeCloseTo(expected, 9);
        }
      }),
      RUNS,
    );
  });
});
