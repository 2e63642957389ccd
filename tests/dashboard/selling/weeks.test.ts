import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Plane, pixelX, pixelY } from "../../../dashboard/charts/plane.ts";
import {
  fullBlocks,
  LANE,
  turns,
  type WeeksTold,
  weekAnchors,
  weekAt,
  weekBoxes,
  weeksPlane,
  weekTexts,
} from "../../../dashboard/charts/weeks.ts";
import { planSpec } from "../../../dashboard/selling/planSpec.ts";
import { plan } from "./plan.ts";

const SIZE = { width: 620, height: 400 };
const PHONE = { width: 290, height: 320 };
const measure = (text: string) => text.length * 7;

/** The lowest price above the lane of blocks. */
const floorOf = ({ y, height }: Plane) => y.min + ((y.max - y.min) * LANE) / height;

function told(prices: readonly number[], lowest: (price: number) => number | null = () => null): WeeksTold {
  return {
    weeks: prices.map((price, i) => ({
      week: i + 1,
      price,
      sold: (i + 1) / (prices.length + 1),
      lowest: lowest(price),
    })),
    sayPrice: (price) => `€${price}`,
    ask: "ask",
    take: "take",
    soldWords: "9 in 10",
  };
}

describe("price over weeks", () => {
  const some = fc.array(fc.integer({ min: 20, max: 900 }), { minLength: 1, maxLength: 52 });

  test("every price and lowest offer lies above the blocks, every week left of the words behind the last", () => {
    fc.assert(
      fc.property(
        some,
        fc.double({ min: 0.2, max: 1, noNaN: true }),
        fc.boolean(),
        (prices, share, phone) => {
          const given = told(prices, (price) => price * share);
          const size = phone ? PHONE : SIZE;
          const plane = weeksPlane(given, size, measure);
          for (const { x, y } of weekAnchors(given.weeks)) {
            expect(y).toBeGreaterThanOrEqual(floorOf(plane));
            expect(pixelY(plane, y)).toBeGreaterThan(0);
            expect(pixelX(plane, x)).toBeLessThanOrEqual(size.width);
          }
          for (const tick of plane.y.ticks) expect(tick).toBeGreaterThanOrEqual(floorOf(plane));
          const end = pixelX(plane, prices.length);
          for (const { text, x } of weekTexts(given, plane, measure).filter(({ kind }) => kind === "plain"))
            expect(x >= end && x + measure(text) <= size.width).toBe(true);
        },
      ),
    );
  });

  test("columns touch, one a week, in order", () => {
    const given = told([100, 90, 80]);
    const plane = weeksPlane(given, SIZE, measure);
    const boxes = weekBoxes(given.weeks, plane);
    expect(boxes.map(({ left }) => left)).toEqual([0, boxes[0]!.right, boxes[1]!.right]);
  });

  test("a certainty that is not there is never drawn", () => {
    expect([0, 0.04, 0.05, 0.44, 0.97, 0.999, 1].map(fullBlocks)).toEqual([0, 0, 1, 4, 9, 9, 10]);
  });

  test("prices are named where they begin; the first and the last always, without meeting", () => {
    fc.assert(
      fc.property(some, (prices) => {
        const given = told(prices);
        const plane = weeksPlane(given, PHONE, measure);
        const named = weekTexts(given, plane, measure).filter(({ kind }) => kind === "strong");
        expect(named[0]?.text).toBe(`€${prices[0]}`);
        expect(named.at(-1)?.text).toBe(`€${turns(given.weeks).at(-1)?.price}`);
        named.slice(1).forEach(({ x, y }, i) => {
          const before = named[i]!;
          expect(x >= before.x + measure(before.text) || Math.abs(y - before.y) >= 17).toBe(true);
        });
      }),
    );
  });

  test("weeks are numbered from the first, as many as have room", () => {
    const ticks = (weeks: number, size: typeof SIZE) =>
      weeksPlane(told(Array(weeks).fill(100)), size, measure).x.ticks.map(weekAt);
    expect(ticks(8, SIZE)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(ticks(26, PHONE)).toEqual([1, 5, 9, 13, 17, 21, 25]);
  });

  test("the words of two lines that end close to each other stand apart", () => {
    const given = told([100, 100], (price) => price - 0.5);
    const plane = weeksPlane(given, SIZE, measure);
    const [ask, take] = weekTexts(given, plane, measure).filter(({ text }) => /ask|take/.test(text));
    expect(take!.y - ask!.y).toBeGreaterThanOrEqual(17);
  });

  test("the lowest offer is in the scene only once it is shown", () => {
    const scene = (shown: boolean) => planSpec(plan(), shown).scene(SIZE, measure);
    expect(scene(false).texts.map(({ text }) => text)).toEqual(["€350", "€325", "€295", "ask", "9 in 10"]);
    expect(scene(true).texts.map(({ text }) => text)).toContain("take");
    const lowest = scene(false).anchors.filter((_, i) => i % 3 === 2);
    expect(lowest.map(({ y }) => y)).toEqual(plan().path.map(({ price }) => price));
    expect(scene(false).order).not.toBe(scene(true).order);
  });
});
