import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { TIERS } from "../../../worker/engine/bicycle.ts";
import { settleAttributes } from "../../../worker/engine/inspection/attributeDefaults.ts";
import { FRAME, type SoundPiece, soundPieces } from "../../../worker/engine/valuation/soundPieces.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { anyDescription } from "../properties/anyFind.ts";

/** Seven pieces sold, 0.70 of them, half of the money from three or four: common practice, no source. */
const TABLE = BOOK.catalogue.value.parts;
const anyBike = anyDescription.map((bike) =>
  settleAttributes(bike, BOOK.catalogue.inspection.attributeDefaults),
);
const sum = (pieces: readonly SoundPiece[], of: (piece: SoundPiece) => number) =>
  pieces.reduce((total, piece) => total + of(piece), 0);

describe("the pieces of a sound bike", () => {
  test("share the whole worth, and the seven best fetch the total, 0.70 of it sold", () => {
    fc.assert(
      fc.property(anyBike, fc.double({ min: 1, max: 5000, noNaN: true }), (bike, total) => {
        const pieces = soundPieces(TABLE, bike, total);
        const seven = pieces.slice(0, 7);
        expect(sum(pieces, ({ share }) => share)).toBeCloseTo(1, 9);
        expect(sum(seven, ({ price }) => price) / total).toBeCloseTo(1, 9);
        expect(sum(seven, ({ price, sells }) => price * sells) / total).toBeCloseTo(0.7, 9);
        for (const { sells } of pieces) expect(sells).toBeLessThan(1);
        expect(pieces.find(({ id }) => id === FRAME)!.share).toBeCloseTo(
          1 - TABLE.frameUnsaleable[bike.componentTier],
          9,
        );
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test.each(TIERS)("%s: without its frame the next best seven fetch the haircut of the total", (tier) => {
    const bike = settleAttributes(
      { category: "road-racing", era: "2000s", frameMaterial: "steel", componentTier: tier },
      BOOK.catalogue.inspection.attributeDefaults,
    );
    const others = soundPieces(TABLE, bike, 100).filter(({ id }) => id !== FRAME);
    const without = sum(others.slice(0, 7), ({ price }) => price);
    expect(Math.abs(without / (100 * TABLE.frameUnsaleable[tier]) - 1)).toBeLessThan(0.06);
    const dearest = others.concat(soundPieces(TABLE, bike, 100).filter(({ id }) => id === FRAME));
    const prices = dearest.map(({ share }) => share).sort((a, b) => b - a);
    const from = (n: number) => prices.slice(0, n).reduce((total, share) => total + share, 0);
    expect(from(2)).toBeLessThan(0.5);
    expect(from(4)).toBeGreaterThan(0.5);
  });

  test("seven pieces take about sixteen minutes each", () => {
    fc.assert(
      fc.property(anyBike, (bike) => {
        const each = sum(soundPieces(TABLE, bike, 100).slice(0, 7), ({ minutes }) => minutes) / 7;
        expect(Math.abs(each - 16)).toBeLessThan(1.5);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test.each([
    ["integrated levers on a modern racing bike", "road-racing", "2010s", "Brake and shift levers in one"],
    ["separate levers on an old one", "road-racing", "1980s", "Shift levers"],
    ["a suspension fork where there is one", "mountain-suspension", "2010s", "Suspension fork"],
  ] as const)("%s", (_, category, era, name) => {
    const bike = settleAttributes(
      { category, era, frameMaterial: "aluminium", componentTier: "mid" },
      BOOK.catalogue.inspection.attributeDefaults,
    );
    expect(soundPieces(TABLE, bike, 100).map((piece) => piece.name)).toContain(name);
  });

  test("a hub gear has no mechs, a derailleur no hub gear", () => {
    const names = (drivetrain: "hub-gear" | "derailleur") =>
      soundPieces(
        TABLE,
        settleAttributes(
          {
            category: "city-roadster",
            era: "1990s",
            frameMaterial: "steel",
            componentTier: "mid",
            drivetrain,
          },
          BOOK.catalogue.inspection.attributeDefaults,
        ),
        100,
      ).map(({ id }) => id);
    expect(names("hub-gear")).toContain("hub-gear");
    expect(names("hub-gear")).not.toContain("mechs");
    expect(names("derailleur")).not.toContain("hub-gear");
  });
});
