import { describe, expect, test } from "vitest";
import { changeOfCourse } from "../../../worker/engine/decision/changeOfCourse.ts";
import { logNormalMean } from "../../../worker/engine/statistics/logNormal.ts";
import { type Found, lookedOver, situationFor } from "./lookedOver.ts";

describe("what is done instead where a fault costs too much", () => {
  test("is never a sale whose fixed fee and packing eat more than recycling costs", () => {
    const entry: Found = { bike: { componentTier: "entry" } };
    const change = (fixed: number, packing = 0) =>
      changeOfCourse(
        situationFor(lookedOver({ ...entry, workshop: { fee: { rate: 0.05, fixed }, packing } })),
      );
    expect(change(0).sale).not.toBeNull();
    const { share, price } = change(0).sale!;
    const takings = share * logNormalMean(price);
    expect(change(takings + 1)).toMatchObject({ sale: null });
    expect(change(0, takings + 1)).toMatchObject({ sale: null });
    expect(change(0).worth - change(5).worth).toBeCloseTo(5, 9);
  });

  test("breaks a bike with a blocking fault in frame or fork for what its parts bring without the frame", () => {
    const bent = situationFor(
      lookedOver({ bike: { componentTier: "top" }, found: { "fork-alignment": "bent" } }),
    );
    expect(bent.frameUnsaleableChance).toBe(1);
    const most = Math.max(bent.parts.withoutFrame.gross, logNormalMean(bent.pricing.asFoundNotRiding));
    expect(logNormalMean(changeOfCourse(bent).sale!.price)).toBeLessThanOrEqual(most + 1e-9);
  });
});
