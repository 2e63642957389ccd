import { describe, expect, test } from "vitest";
import {
  givenAway,
  lookBeforeListing,
  type Piece,
  piecesTitle,
  soldChance,
} from "../../../dashboard/words/pieces.ts";

/** Invented figures. */
const piece = (name: string, more: Partial<Piece> = {}): Piece => ({
  piece: name.toLowerCase(),
  name,
  listed: true,
  reason: null,
  chanceUsable: 1,
  chanceSold: 0.7,
  price: 20,
  minutes: 16,
  fee: 1.4,
  expected: 12.6,
  lookFirst: [],
  ...more,
});
const away = (name: string, reason: Piece["reason"]) => piece(name, { listed: false, reason });

describe("the title of the parts", () => {
  test("counts the pieces that pay, what they bring and how long they take", () => {
    const four = ["Frame", "Fork", "Saddle", "Pedals"].map((name) => piece(name));
    expect(piecesTitle(four, "EUR")).toBe("Four pieces bring about €50 for 1.1 h of selling");
    expect(piecesTitle([piece("Fork"), away("Saddle", "spoiled")], "EUR")).toBe(
      "One piece brings about €13 for 16 min of selling",
    );
  });

  test("says where none pays", () => {
    expect(piecesTitle([away("Saddle", "not-worth-its-minutes")], "EUR")).toBe(
      "No piece pays for the minutes to sell it",
    );
  });
});

test("a piece is sold where it is fit to sell and finds a buyer", () => {
  expect(soldChance(piece("Fork", { chanceUsable: 0.5, chanceSold: 0.8 }))).toBeCloseTo(0.4, 12);
});

test("what is not listed is told by reason, each once and with all its pieces", () => {
  const told = givenAway([
    piece("Frame"),
    piece("Pair of wheels"),
    away("Saddle", "not-worth-its-minutes"),
    away("Pedals", "not-worth-its-minutes"),
    away("Seat post", "enough-listed"),
    away("Fork", "crash-exposed"),
    away("Headset", "spoiled"),
    away("Frame", "frame-blocked"),
  ]);
  expect(told.map(({ what }) => what)).toEqual([
    "Saddle and pedals",
    "Seat post",
    "Headset",
    "Fork",
    "Frame",
  ]);
  expect(told[1]!.why).toContain("two better ones");
  expect(givenAway([piece("Frame")])).toEqual([]);
});

describe("what to look at before listing", () => {
  const name = (check: string) => ({ "front-impact": "Signs of a front impact" })[check] ?? check;

  test("names the checks once and the pieces that wait for them", () => {
    const lookFirst = ["front-impact"];
    const pieces = [
      piece("Fork", { lookFirst }),
      piece("Handlebar with stem", { lookFirst }),
      piece("Saddle"),
    ];
    expect(lookBeforeListing(pieces, name)).toBe(
      "Not looked at: signs of a front impact. Look before you list fork and handlebar with stem: after a crash they are not sold.",
    );
  });

  test("is silent where such a piece is not listed or nothing is open", () => {
    const unlisted = { listed: false, reason: "spoiled", lookFirst: ["front-impact"] } as const;
    expect(lookBeforeListing([piece("Fork", unlisted), piece("Saddle")], name)).toBeNull();
  });
});
