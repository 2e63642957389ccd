import { describe, expect, test } from "vitest";
import { type Era, TIERS } from "../../../worker/engine/bicycle.ts";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { type SettledRequest, settleRequest } from "../../../worker/engine/decision/settledRequest.ts";
import { valueFind } from "../../../worker/engine/decision/valueFind.ts";
import type { DescribedAttributes } from "../../../worker/engine/inspection/find.ts";
import type { Comparable } from "../../../worker/engine/valuation/comparable.ts";
import { readComparables } from "../../../worker/engine/valuation/learnFromSales.ts";
import { PRICED_CATEGORIES } from "../../../worker/engine/valuation/valueLayout.ts";
import { lookedOver } from "./lookedOver.ts";
import { BOOK } from "./shippedBook.ts";

const SALES = 3;
const ERAS: readonly Era[] = ["1970s", "1990s", "2010s"];
const MATERIALS = ["steel", "aluminium"] as const;

interface Find {
  readonly request: AppraisalRequest;
  readonly settled: SettledRequest;
  /** Middle of the find, made safe, by the table alone. */
  readonly before: number;
}

/** Finds of every kind and tier, looked over and faultless. */
const FINDS: readonly Find[] = PRICED_CATEGORIES.flatMap((category) =>
  TIERS.flatMap((componentTier) =>
    ERAS.flatMap((era) =>
      MATERIALS.map((frameMaterial) =>
        findOf({ category, componentTier, era, frameMaterial, kept: "sheltered" } as DescribedAttributes),
      ),
    ),
  ),
);

function findOf(bike: DescribedAttributes): Find {
  const request = lookedOver({ bike });
  const before = valueFind(request, BOOK).value!.madeSafe!.p50;
  return { request, settled: settleRequest(request, BOOK), before };
}

type Told = Pick<Comparable, "kind" | "likeThis"> & Partial<Comparable>;

/** The find's own description, as a user would give it with a sale; or the part of it that everybody knows. */
function describedAs({ settled }: Find, condition: number): Partial<Comparable> {
  const { attributes: bike, originality, desirability } = settled;
  const { category, era, frameMaterial, componentTier, sizeClass, place, stepThrough, drivetrain } = bike;
  return {
    attributes: { category, era, frameMaterial, componentTier, sizeClass, place, stepThrough, drivetrain },
    state: "rides",
    condition,
    originality,
    desirability,
  };
}

/** The middle of the find, made safe, after three prices of half of what the table says of bikes so described, over that before. */
function pulled(find: Find, told: Told): number {
  const comparable = { ageDays: 0, attributes: {}, ...told };
  const price = tablePrice(find, comparable) / 2;
  const comparables = Array.from({ length: SALES }, () => ({ ...comparable, price }));
  const { value: after } = valueFind({ ...find.request, comparables }, BOOK);
  return after!.madeSafe!.p50 / find.before;
}

/** The price at which a comparable would tell nothing new: its row times what is believed beforehand, after haggling where it was paid. */
function tablePrice({ settled }: Find, comparable: Omit<Comparable, "price">): number {
  const { haggling } = BOOK.catalogue.defaults;
  const [read] = readComparables(BOOK.value, [{ ...comparable, price: 1 }], {
    paidShare: { rides: 1 - haggling.rideable, notRiding: 1 - haggling.asFound },
    logPriceLevel: 0,
    like: settled.attributes,
  });
  const { coefficients } = BOOK.value.initial;
  return Math.exp(read!.x.reduce((sum, value, column) => sum + value * coefficients[column]!, -read!.y));
}

/** Least and most of all finds. */
function span(told: (find: Find) => Told): { least: number; most: number } {
  const ratios = FINDS.map((find) => pulled(find, told(find)));
  return { least: Math.min(...ratios), most: Math.max(...ratios) };
}

const READY = 0.75;

describe("three prices of one's own at half the table's level", () => {
  // Half would be to believe them alone; 1 to believe the table alone.
  test.each<readonly [string, (find: Find) => Told]>([
    [
      "paid for bikes of the same description, ready",
      (find) => ({ kind: "paid", likeThis: false, ...describedAs(find, READY) }),
    ],
    [
      "paid for bikes of the same description, fully restored",
      (find) => ({ kind: "paid", likeThis: false, ...describedAs(find, 1) }),
    ],
    [
      "paid for the same model, described in full",
      (find) => ({ kind: "paid", likeThis: true, ...describedAs(find, READY) }),
    ],
    [
      "asked for the same model, described in full",
      (find) => ({ kind: "asked", likeThis: true, ...describedAs(find, READY) }),
    ],
    ["paid for the same model, which rode", () => ({ kind: "paid", likeThis: true, state: "rides" })],
  ])(
    "%s: the middle comes to 0.45 to 0.75 of the table's",
    (_, told) => {
      const { least, most } = span(told);
      expect(least).toBeGreaterThanOrEqual(0.45);
      expect(most).toBeLessThanOrEqual(0.75);
    },
    60_000,
  );

  // Whether such a bike rode, in what condition and how original it was is open, or the price is only what somebody hoped for: it may lie at half the
  // table's level for those reasons too, so it moves the middle less. Most where the find's own kind scatters more or its state matters most.
  test.each<readonly [string, (find: Find) => Told]>([
    ["paid for the same model, nothing else told", () => ({ kind: "paid", likeThis: true })],
    ["asked for the same model, nothing else told", () => ({ kind: "asked", likeThis: true })],
    [
      "asked for bikes of the same description",
      (find) => ({ kind: "asked", likeThis: false, ...describedAs(find, READY) }),
    ],
    [
      "paid for bikes of the same kind, era, material and tier, which rode",
      ({
        settled: {
          attributes: { category, era, frameMaterial, componentTier },
        },
      }) => ({
        kind: "paid",
        likeThis: false,
        attributes: { category, era, frameMaterial, componentTier },
        state: "rides",
      }),
    ],
  ])(
    "%s: to 0.6 to 0.8 of it",
    (_, told) => {
      const { least, most } = span(told);
      expect(least).toBeGreaterThanOrEqual(0.6);
      expect(most).toBeLessThanOrEqual(0.8);
    },
    60_000,
  );

  test("the better a price is described, the farther it moves the middle", () => {
    const [find] = FINDS as [Find];
    const told: readonly Told[] = [
      { kind: "paid", likeThis: true, ...describedAs(find, READY) },
      { kind: "paid", likeThis: true, state: "rides" },
      { kind: "paid", likeThis: true },
      { kind: "paid", likeThis: false },
    ];
    const ratios = told.map((one) => pulled(find, one));
    expect(ratios).toEqual(ratios.toSorted((a, b) => a - b));
    expect(ratios.at(-1)!).toBeLessThan(1);
  });
});
