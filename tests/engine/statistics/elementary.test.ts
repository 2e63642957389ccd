import { describe, expect, test } from "vitest";
import { exp } from "../../../worker/engine/statistics/elementary/exp.ts";
import { expm1 } from "../../../worker/engine/statistics/elementary/expm1.ts";
import { exponentOf } from "../../../worker/engine/statistics/elementary/exponent.ts";
import { asinh, sinh } from "../../../worker/engine/statistics/elementary/hyperbolic.ts";
import { log, log1p } from "../../../worker/engine/statistics/elementary/log.ts";
import { cubed, hypot, squared } from "../../../worker/engine/statistics/elementary/powers.ts";
import { powerOfTwo, timesPowerOfTwo } from "../../../worker/engine/statistics/elementary/powersOfTwo.ts";
import { expFixed, fixed, logFixed, ONE, unitsOff } from "./exactly.ts";

const LEAST = Number.MIN_VALUE;
const LEAST_NORMAL = 2 ** -1022;

/** Even but not regular numbers between 0 and 1: multiples of the golden ratio. */
const spread = (count: number) => Array.from({ length: count }, (_, i) => ((i + 1) * 0.6180339887498949) % 1);

describe("special values, as ECMA-262 gives them for Math's functions of the same name, and what is too large or too small for a double", () => {
  test.each([
    [
      "exp",
      exp,
      [
        [NaN, NaN],
        [0, 1],
        [-0, 1],
        [Infinity, Infinity],
        [-Infinity, 0],
        [710, Infinity],
        [-746, 0],
      ],
    ],
    [
      "log",
      log,
      [
        [NaN, NaN],
        [-1, NaN],
        [-Infinity, NaN],
        [0, -Infinity],
        [-0, -Infinity],
        [1, 0],
        [Infinity, Infinity],
      ],
    ],
    [
      "log1p",
      log1p,
      [
        [NaN, NaN],
        [-2, NaN],
        [-Infinity, NaN],
        [-1, -Infinity],
        [0, 0],
        [-0, -0],
        [Infinity, Infinity],
      ],
    ],
    [
      "expm1",
      expm1,
      [
        [NaN, NaN],
        [0, 0],
        [-0, -0],
        [Infinity, Infinity],
        [-Infinity, -1],
        [-50, -1],
        [710, Infinity],
      ],
    ],
    [
      "sinh",
      sinh,
      [
        [NaN, NaN],
        [0, 0],
        [-0, -0],
        [Infinity, Infinity],
        [-Infinity, -Infinity],
      ],
    ],
    [
      "asinh",
      asinh,
      [
        [NaN, NaN],
        [0, 0],
        [-0, -0],
      ],
    ],
  ] as const)("%s", (_, f, pairs) => {
    for (const [x, y] of pairs) expect(f(x), String(x)).toBe(y);
  });

  test("the smallest numbers stay themselves where the slope is 1", () => {
    for (const f of [log1p, expm1]) {
      for (const x of [LEAST, -LEAST, LEAST_NORMAL, 1e-20, -1e-20]) expect(f(x)).toBe(x);
    }
  });
});

describe("within one unit in the last place of series summed in whole numbers of 1300 binary digits", () => {
  const numbers = spread(120).map((u) => 2 * u - 1);

  test("the series: e, ln 2 and ln 10 to 40 digits (DLMF 4.2.11; Abramowitz & Stegun, table 1.1)", () => {
    const digits = (x: bigint) => ((x * 10n ** 40n) / ONE).toString();
    expect(digits(expFixed(ONE))).toBe("27182818284590452353602874713526624977572");
    expect(digits(logFixed(2n * ONE, Math.LN2))).toBe("6931471805599453094172321214581765680755");
    expect(digits(logFixed(10n * ONE, Math.LN10))).toBe("23025850929940456840179914546843642076011");
  });

  test("exp, expm1 and, within three, sinh", () => {
    for (const u of numbers) {
      for (const x of [u * 1e-8, u * 0.35, u * 2, u * 30, u * 300]) {
        const due = expFixed(fixed(x));
        expect(unitsOff(exp(x), due), `exp ${x}`).toBeLessThan(1);
        expect(unitsOff(expm1(x), due - ONE), `expm1 ${x}`).toBeLessThan(1);
        expect(unitsOff(sinh(x), (due - (ONE * ONE) / due) / 2n), `sinh ${x}`).toBeLessThan(3);
      }
    }
  });

  test("exp to the ends of the range, and below where digits run out", () => {
    for (const x of [-707.99, -708, -708.3, -720, -744, -745.1, 708.9, 709, 709.5, 709.78271289338397])
      expect(unitsOff(exp(x), expFixed(fixed(x))), `exp ${x}`).toBeLessThan(1);
  });

  test("log and log1p", () => {
    for (const u of numbers) {
      for (const x of [1 + u / 2, 1 + u / 1000, 10 ** (9 * u), 10 ** (300 * u)])
        expect(unitsOff(log(x), logFixed(fixed(x), log(x))), `log ${x}`).toBeLessThan(1);
      for (const x of [
        u,
        u / 3,
        0.4142 + 0.006 * Math.abs(u),
        u * 1e-3,
        u * 1e-8,
        10 ** (9 * u),
        10 ** (30 * u),
      ])
        expect(unitsOff(log1p(x), logFixed(ONE + fixed(x), log1p(x))), `log1p ${x}`).toBeLessThan(1);
    }
    for (const x of [LEAST, 3 * LEAST, LEAST_NORMAL, Number.MAX_VALUE, Math.SQRT1_2, Math.SQRT2])
      expect(unitsOff(log(x), logFixed(fixed(x), log(x))), `log ${x}`).toBeLessThan(1);
  });
});

describe("laws", () => {
  test.each([
    ["exp", exp, -745, 710],
    ["exp", exp, -0.4, 0.4],
    ["expm1", expm1, -2, 2],
    ["log", log, 0.5, 2],
    ["log1p", log1p, -0.5, 1],
    ["sinh", sinh, -3, 3],
    ["asinh", asinh, -3, 3],
  ] as const)("%s does not fall between %s and its neighbours from %d to %d", (_, f, low, high) => {
    const xs = spread(20_000)
      .map((u) => low + u * (high - low))
      .sort((a, b) => a - b);
    const falls = xs.filter((x, i) => i > 0 && f(x) < f(xs[i - 1]!));
    expect(falls).toEqual([]);
  });

  test("a function and its inverse meet", () => {
    for (const u of spread(2000)) {
      const x = 40 * u - 20;
      expect(Math.abs(log(exp(x)) - x)).toBeLessThan(4e-15);
      expect(log1p(expm1(x / 20)) / (x / 20)).toBeCloseTo(1, 14);
      expect(sinh(asinh(x)) / x).toBeCloseTo(1, 13);
    }
  });

  test("asinh by its logarithm, and near 0 by its series", () => {
    expect(asinh(1)).toBeCloseTo(Math.log(1 + Math.SQRT2), 15);
    expect(asinh(-1e-4) / (-1e-4 + 1e-12 / 6)).toBeCloseTo(1, 15);
  });
});

test("powers of two are exact, their exponents found, and the product with one rounded once", () => {
  for (const k of [-1074, -1022, -1, 0, 1, 52, 1023]) expect(powerOfTwo(k)).toBe(2 ** k);
  for (const [x, k] of [
    [1, 0],
    [1.41, 0],
    [1.42, 1],
    [0.71, 0],
    [0.7, -1],
    [LEAST_NORMAL, -1022],
    [Number.MAX_VALUE, 1024],
  ] as const)
    expect(exponentOf(x)).toBe(k);
  expect(timesPowerOfTwo(0.75, 1024)).toBe(2 ** 1023 * 1.5);
  expect(timesPowerOfTwo(1.25, -1074)).toBe(LEAST);
  expect(timesPowerOfTwo(1.25, -1080)).toBe(0);
});

test("squares, cubes, and the long side of a triangle", () => {
  expect([squared(-3), cubed(-3), hypot(-3, 4), hypot(0, 0)]).toEqual([9, -27, 5, 0]);
});
