import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { normalCdf } from "../../../worker/engine/statistics/standardNormal.ts";
import { playedCourses } from "../../engine/walker/finds.ts";
import { engineDistribution } from "../engineDistribution.ts";
import { aliasTable } from "./aliasTable.ts";
import { courseModel } from "./courseModel.ts";
import { drawCourse } from "./drawCourse.ts";
import { normals } from "./normals.ts";
import { selectPlaces } from "./quickselect.ts";
import { randomBits, xoshiro } from "./randomBits.ts";

describe("random bits", () => {
  // Blackman and Vigna's reference program, as the test suites of two other implementations give its output: publictheta/xoshiro128 (the first four) and
  // php-src, ext/random/tests/02_engine/user_xoshiro128plusplus.phpt (after 102,400; its bytes there in rising order).
  test("are those of the reference program", () => {
    const first = new Uint32Array(4);
    xoshiro([0, 1, 2, 3]).fill(first);
    expect([...first]).toEqual([384, 524546, 1075056769, 2828078338]);
    const many = new Uint32Array(102_401);
    xoshiro([1, 2, 3, 4]).fill(many);
    expect(many.at(-1)).toBe(0x2c873cfa);
  });
});

describe("normal numbers of the ziggurat", () => {
  test("lie below z as often as they should, tails included, within four standard errors", () => {
    const count = 2_000_000;
    const values = new Float64Array(count);
    normals(randomBits(3))(values);
    values.sort();
    for (const z of [-4, -3.45, -2.5, -1.28, -0.3, 0, 0.01, 0.7, 1.64, 3, 3.6]) {
      const chance = normalCdf(z);
      const at = values.findIndex((value) => value > z);
      const below = (at < 0 ? count : at) / count;
      expect(Math.abs(below - chance)).toBeLessThan(4 * Math.sqrt((chance * (1 - chance)) / count));
    }
  });
});

describe("an alias table", () => {
  test("gives every item its chance", () => {
    const parts = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(parts, (all) => {
        const total = all.reduce((sum, one) => sum + one, 0);
        fc.pre(total > 1e-3);
        const { size, threshold, alias, lowBits } = aliasTable(all);
        const given = new Float64Array(size);
        for (let slot = 0; slot < size; slot++) {
          const own = threshold[slot]! / (lowBits + 1);
          given[slot]! += own / size;
          given[alias[slot]!]! += (1 - own) / size;
        }
        all.forEach((one, item) => {
          expect(given[item]).toBeCloseTo(one / total, 6);
        });
      }),
    );
  });
});

describe("places picked without sorting", () => {
  test("hold what sorting puts there", () => {
    const values = fc.array(fc.oneof(fc.integer({ min: 0, max: 5 }), fc.double({ noNaN: true })), {
      minLength: 1,
      maxLength: 60,
    });
    fc.assert(
      fc.property(values, (all) => {
        const places = [...new Set([0.1, 0.5, 0.9].map((share) => Math.floor(share * all.length)))];
        const picked = Float64Array.from(all);
        selectPlaces(picked, places);
        const sorted = Float64Array.from(all).sort();
        for (const place of places) expect(picked[place] === sorted[place]).toBe(true);
      }),
    );
  });
});

describe("a course drawn", () => {
  const count = 200_000;
  const courses = playedCourses().filter(({ course }) => course.unknown !== null);

  test.each(courses.map((one) => [one.name, one] as const))(
    "%s: brings and takes on average what the engine expects, within four standard errors",
    (_, { find: { situation }, course }) => {
      const margins = new Float64Array(count);
      const hours = new Float64Array(count);
      drawCourse(courseModel(situation, course, course.unknown!), 5, margins, hours);
      const { margin, hours: worked } = engineDistribution(situation, course, course.unknown!)();
      for (const [drawn, told] of [
        [margins, margin.mean],
        [hours, worked.mean],
      ] as const) {
        const mean = drawn.reduce((sum, one) => sum + one, 0) / count;
        const variance = drawn.reduce((sum, one) => sum + (one - mean) ** 2, 0) / count;
        expect(Math.abs(mean - told)).toBeLessThan(4 * Math.sqrt(variance / count));
      }
    },
  );

  test("where hours are not asked for the margins are drawn all the same", () => {
    const { find, course } = courses[0]!;
    const model = courseModel(find.situation, course, course.unknown!);
    const alone = new Float64Array(count);
    drawCourse(model, 5, alone);
    const mean = alone.reduce((sum, one) => sum + one, 0) / count;
    const variance = alone.reduce((sum, one) => sum + (one - mean) ** 2, 0) / count;
    expect(Math.abs(mean - course.expected.margin)).toBeLessThan(4 * Math.sqrt(variance / count));
  });
});
