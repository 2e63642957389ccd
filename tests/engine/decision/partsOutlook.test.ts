import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ReportedPiece } from "../../../worker/engine/decision/appraisal.ts";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { outcomeOf } from "../../../worker/engine/decision/outcome.ts";
import { reportedPieces } from "../../../worker/engine/decision/reportedPieces.ts";
import { reportPlan } from "../../../worker/engine/decision/reportedPlan.ts";
import { valueFind } from "../../../worker/engine/decision/valueFind.ts";
import { weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { anyFind, likelyFind, seenFind } from "../properties/anyFind.ts";
import { type Found, lookedOver, openedCourse, situationFor } from "./lookedOver.ts";
import { BOOK } from "./shippedBook.ts";

const UPPER: Found["bike"] = { componentTier: "upper" };
const RACER: Found["bike"] = { category: "road-racing", era: "2010s", frameMaterial: "aluminium" };
const piecesOf = (found: Found) => valueFind(lookedOver(found), BOOK).value!.pieces;
const named = (pieces: readonly ReportedPiece[], id: string) => pieces.find(({ piece }) => piece === id)!;
const listed = (pieces: readonly ReportedPiece[]) => pieces.filter((one) => one.listed);
const takings = (pieces: readonly ReportedPiece[]) =>
  listed(pieces).reduce((sum, { expected }) => sum + expected, 0);
const { signs, exposed } = BOOK.catalogue.value.parts.pieces.crash;

describe("what a finding does to a piece", () => {
  test("a fault takes its share off its own piece and leaves the others as they are", () => {
    const sound = piecesOf({ bike: UPPER });
    const bad = piecesOf({ bike: UPPER, found: { cranks: "cracked" } });
    const scale = named(sound, "frame").price / (1 - BOOK.catalogue.value.parts.frameUnsaleable.upper);
    expect(named(sound, "crankset").price - named(bad, "crankset").price).toBeCloseTo(0.08 * scale, 9);
    for (const { piece, price } of sound)
      if (piece !== "crankset") expect(named(bad, piece).price).toBeCloseTo(price, 9);
  });

  test("a piece of which nothing is left is spoiled", () => {
    const dead = piecesOf({
      bike: { category: "mountain-suspension", era: "2010s", frameMaterial: "aluminium" },
      found: { "suspension-fork": "dead" },
    });
    expect(named(dead, "fork")).toMatchObject({ listed: false, reason: "spoiled", price: 0, expected: 0 });
  });

  test("a check not made takes its share by its chance, as looking would on average", () => {
    const at = (found: Found) => named(piecesOf({ bike: UPPER, ...found }), "crankset");
    const unmade = { unseen: ["cranks"] };
    const { inspection } = situationFor(lookedOver({ bike: UPPER, ...unmade }));
    const { probabilities } = inspection.unseen.find(({ check }) => check === "cranks")!;
    const spoiled = probabilities[2]! + probabilities[3]!;
    const [sound, bad] = [at({}), at({ found: { cranks: "cracked" } })];
    expect(spoiled).toBeGreaterThan(0);
    expect(at(unmade).expected).toBeCloseTo((1 - spoiled) * sound.expected + spoiled * bad.expected, 9);
    expect(at(unmade).price).toBe(sound.price);
  });

  test("a stuck post spoils the post and takes some off the frame", () => {
    const [sound, stuck] = [{}, { "seatpost-free": "stuck" }].map((found) =>
      piecesOf({ bike: UPPER, found }),
    );
    expect(named(stuck!, "post").expected).toBeLessThan(named(sound!, "post").expected);
    expect(named(stuck!, "frame").price).toBeLessThan(named(sound!, "frame").price);
  });

  test("one wheel missing leaves the other; a saddle missing is no row", () => {
    const whole = piecesOf({ bike: UPPER });
    const less = piecesOf({ bike: UPPER, find: { missingParts: ["wheel-rear", "saddle"] } });
    expect(less.map(({ piece }) => piece)).not.toContain("saddle");
    const ratio = named(less, "wheels").price / named(whole, "wheels").price;
    expect(ratio).toBeGreaterThan(0.4);
    expect(ratio).toBeLessThan(0.5);
  });

  test("a bare frame breaks into nothing", () => {
    expect(piecesOf({ bike: { completeness: "frame-and-fork" } })).toEqual([]);
  });
});

describe("frame and crash", () => {
  test("a frame with a blocking fault is not sold, whatever it would bring", () => {
    const frame = named(piecesOf({ bike: UPPER, found: { rust: "deep" } }), "frame");
    expect(frame).toMatchObject({ listed: false, reason: "frame-blocked", chanceUsable: 0 });
    expect(frame.price).toBeGreaterThan(50);
  });

  test.each(signs.flatMap(({ check, levels }) => levels.map((level) => [check, level] as const)))(
    "%s %s: bar, stem and fork are not sold",
    (check, level) => {
      const pieces = piecesOf({
        bike: { ...RACER, frameMaterial: "carbon", componentTier: "top" },
        found: { [check]: level },
      });
      const kept = pieces.filter(({ piece }) => exposed.includes(piece));
      expect(kept).toHaveLength(2);
      for (const one of kept)
        expect(one).toMatchObject({ listed: false, reason: "crash-exposed", chanceUsable: 0, lookFirst: [] });
      expect(named(pieces, "wheels").listed).toBe(true);
    },
  );

  test("where front impact was not looked at its chance counts, and the list says to look first", () => {
    const [seen, unseen] = [{}, { unseen: ["front-impact"] }].map((look) =>
      named(piecesOf({ bike: UPPER, ...look }), "fork"),
    );
    expect(seen!.lookFirst).toEqual([]);
    expect(unseen!.lookFirst).toEqual(["front-impact"]);
    expect(unseen!.chanceUsable).toBeLessThan(seen!.chanceUsable);
    const { inspection } = situationFor(lookedOver({ bike: UPPER, unseen: ["front-impact"] }));
    const { probabilities } = inspection.unseen.find(({ check }) => check === "front-impact")!;
    expect(unseen!.chanceUsable / seen!.chanceUsable).toBeCloseTo(probabilities[0]!, 9);
  });
});

describe("the course and its list", () => {
  /** The pieces, the course's stripping and its margin as an answer tells them; null where it is closed. */
  function courseSums(request: AppraisalRequest) {
    const find = weighFind(request, BOOK);
    const course = find.stop ? undefined : find.courses.find((one) => one.course === "break-for-parts");
    if (find.stop || !course?.open) return null;
    const { situation, settled } = find;
    const { operations } = reportPlan(course, settled);
    const strip = operations.find(({ operation }) => operation === "strip-for-parts")!;
    const { margin } = outcomeOf(course.branches, settled.workshop);
    return { pieces: reportedPieces(situation), margin, strip, situation };
  }

  test("hours: stripping takes its own minutes and those of the listed pieces, at the user's speed", () => {
    const { minutes } = BOOK.service.operations.get("strip-for-parts")!;
    const own = (minutes.optimistic + 4 * minutes.likely + minutes.pessimistic) / 6;
    fc.assert(
      fc.property(likelyFind, (request) => {
        const sums = courseSums(request);
        if (!sums) return;
        const speed = request.workshop?.speedFactor ?? BOOK.catalogue.defaults.speedFactor;
        const posting = listed(sums.pieces).reduce((sum, one) => sum + one.minutes, 0);
        expect(sums.strip.minutes).toBeCloseTo(speed * own + posting, 6);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  test("money: with fixed fee and packing nought, margin is the list's takings less what the plan costs and the purchase", () => {
    fc.assert(
      fc.property(likelyFind, (request) => {
        const workshop = { ...request.workshop, packing: 0, fee: { ...request.workshop?.fee, fixed: 0 } };
        const sums = courseSums({ ...request, workshop });
        if (!sums) return;
        const plan = sums.situation.fixedPlans["break-for-parts"];
        const { purchase } = sums.situation.settled;
        const ahead = purchase.paid ? 0 : purchase.price + purchase.travelCost;
        const clear = 1 - plan.endsTitle;
        const expected = clear * (takings(sums.pieces) - plan.money.mean) - ahead;
        expect(sums.margin.mean).toBeCloseTo(expected, 5);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  test("leaves no less than selling all the best seven", () => {
    fc.assert(
      fc.property(seenFind, (request) => {
        const situation = situationFor(request);
        if (situation.partsClosedBecause !== null) return;
        const { workshop, fee, packing } = situation.settled;
        const minute = (workshop.speedFactor * workshop.hourlyGoal) / 60;
        const { list } = situation.parts;
        const may = list.pieces.filter(({ reason }) => reason === null || /minutes|enough/.test(reason));
        const seven = may.toSorted((a, b) => b.expected - a.expected).slice(0, 7);
        const all = seven.reduce((sum, one) => sum + one.expected - minute * one.minutes, 0);
        const fixed = (some: boolean) => (some ? fee.fixed + packing : 0);
        const left = list.takings - minute * list.minutes - fixed(list.minutes > 0);
        expect(left).toBeGreaterThanOrEqual(all - fixed(seven.length > 0) - 1e-9);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  test("never lists a blocked frame, nor bar, stem or fork with a sign of a crash, nor what is missing", () => {
    fc.assert(
      fc.property(anyFind, (request) => {
        const situation = situationFor(request);
        const found = situation.inspection.findings;
        const pieces = reportedPieces(situation);
        const crashed = signs.some(({ check, levels }) =>
          found.some((one) => one.check === check && levels.includes(one.level)),
        );
        const blocked = found.some(
          ({ check, safety }) => safety === "block" && BOOK.checks.get(check)!.group === "frame-fork",
        );
        const sold = listed(pieces).map(({ piece }) => piece);
        expect(sold.length).toBeLessThanOrEqual(7);
        if (blocked) expect(sold).not.toContain("frame");
        if (crashed) expect(sold.filter((id) => exposed.includes(id))).toEqual([]);
        const missing = request.find.missingParts ?? [];
        for (const [part, piece] of [
          ["saddle", "saddle"],
          ["seatpost", "post"],
          ["tyre", "tyres"],
        ] as const)
          if (missing.includes(part)) expect(pieces.some((one) => one.piece === piece)).toBe(false);
      }),
      { seed: 20261125, numRuns: 150 },
    );
  });

  test("a higher goal never lists more", () => {
    fc.assert(
      fc.property(likelyFind, fc.double({ min: 0, max: 60, noNaN: true }), (request, more) => {
        const at = (hourlyGoal: number) =>
          reportedPieces(situationFor({ ...request, workshop: { ...request.workshop, hourlyGoal } }));
        const goal = request.workshop?.hourlyGoal ?? BOOK.catalogue.defaults.hourlyGoal;
        expect(listed(at(goal + more)).length).toBeLessThanOrEqual(listed(at(goal)).length);
      }),
      { seed: 20261125, numRuns: 75 },
    );
  });

  test("an hour worth more than all the parts lists nothing: no sale, no fee, and the work alone is lost", () => {
    const found: Found = { bike: { componentTier: "entry" }, workshop: { hourlyGoal: 60, packing: 5 } };
    const course = openedCourse("break-for-parts", found);
    expect(listed(piecesOf(found))).toEqual([]);
    expect(course.branches.every(({ price }) => price === null)).toBe(true);
    expect(course.expected.margin).toBeCloseTo(-(1 - course.plan.endsTitle) * course.plan.money.mean, 9);
  });
});
