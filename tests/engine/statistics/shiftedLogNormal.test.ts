import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { logNormalMean, logNormalSd } from "../../../worker/engine/statistics/logNormal.ts";
import {
  type ShiftedLogNormal,
  shiftedLogNormal,
  shiftedLogNormalCdf,
  shiftedLogNormalDensity,
} from "../../../worker/engine/statistics/shiftedLogNormal.ts";
import { normalCdf } from "../../../worker/engine/statistics/standardNormal.ts";

/**
 * Third column of points: chance at or below; fourth: density. From scipy 1.17.1: lognorm, its shape found by brentq on lognorm.stats('s'), its scale
 * from lognorm.std, then lognorm.cdf, sf and pdf.
 */
const CASES = [
  {
    moments: [40, 900, 20000],
    shift: -83.87535070055284,
    logMedian: 4.7907782682578794,
    logSd: 0.238736488507499,
    points: [
      [-20, 0.00396545231704254, 0.0007708764253588372],
      [25, 0.3367757689123313, 0.014045050924011624],
      [85, 0.9218154672992946, 0.003623912322555261],
    ],
  },
  {
    moments: [40, 900, -20000],
    shift: 163.87535070055284,
    logMedian: 4.7907782682578794,
    logSd: 0.238736488507499,
    points: [
      [-20, 0.038044988220187585, 0.0018845766483214915],
      [25, 0.2748723364273747, 0.010061814121504118],
      [85, 0.9617569623609956, 0.004411995965653209],
    ],
  },
  {
    moments: [0, 1, 0.01],
    shift: -300.00111110240425,
    logMedian: 5.703780622840483,
    logSd: 0.0033333117286795198,
    points: [
      [-2, 0.022479634629704495, 0.05380816020634653],
      [1.5, 0.932924706877031, 0.1292734522851977],
    ],
  },
  {
    moments: [120, 400, 64000],
    shift: 106.77900394198602,
    logMedian: 1.9866058539700995,
    logSd: 1.091054831249886,
    points: [
      [80, 0, 0],
      [110, 0.2270072926773964, 0.08577058852085175],
      [150, 0.9485751545613652, 0.002236586393159259],
    ],
  },
  {
    moments: [-15, 2500, -1e6],
    shift: 18.052490145034966,
    logMedian: 2.9028965858442546,
    logSd: 1.091054831249886,
    points: [
      [-115, 0.034231301796481484, 0.0005226608684372613],
      [0, 0.5035149136668094, 0.020253939843064773],
      [60, 1, 0],
    ],
  },
] as const;

describe("a shifted log-normal of three moments", () => {
  test.each(CASES)("has scipy's shape, chances and densities for $moments", (one) => {
    const [mean, variance, third] = one.moments;
    const match = shiftedLogNormal(mean, variance, third)!;
    expect(match.sign).toBe(Math.sign(third));
    expect(match.shift).toBeCloseTo(one.shift, 9);
    expect(match.logMedian).toBeCloseTo(one.logMedian, 10);
    expect(match.logSd).toBeCloseTo(one.logSd, 11);
    for (const [x, below, density] of one.points) {
      expect(shiftedLogNormalCdf(match, x)).toBeCloseTo(below, 10);
      expect(shiftedLogNormalDensity(match, x)).toBeCloseTo(density, 10);
    }
  });

  test("gives the three moments back, whatever they are", () => {
    const amount = fc.double({ min: -1000, max: 1000, noNaN: true });
    const sd = fc.double({ min: 0.1, max: 500, noNaN: true });
    const skewness = fc.double({ min: 1e-4, max: 20, noNaN: true });
    fc.assert(
      fc.property(amount, sd, skewness, fc.constantFrom(1, -1), (mean, spread, size, side) => {
        const match = shiftedLogNormal(mean, spread ** 2, side * size * spread ** 3)!;
        expect(match.sign).toBe(side);
        const again = momentsOf(match);
        expect(Math.abs(again.mean - mean)).toBeLessThan(1e-9 * (Math.abs(mean) + Math.abs(match.shift)));
        expect(again.sd / spread).toBeCloseTo(1, 9);
        expect(again.skewness / (side * size)).toBeCloseTo(1, 6);
      }),
    );
  });

  test("nears the normal as the skewness goes to nought, and is null there or without variance", () => {
    expect(shiftedLogNormal(10, 4, 0)).toBeNull();
    expect(shiftedLogNormal(10, 0, 0)).toBeNull();
    for (const third of [2e-6, -2e-6]) {
      const match = shiftedLogNormal(10, 4, third)!;
      for (const x of [6, 9, 10, 13])
        expect(Math.abs(shiftedLogNormalCdf(match, x) - normalCdf((x - 10) / 2))).toBeLessThan(3e-8);
    }
  });

  test("refuses what no distribution has, by name", () => {
    expect(() => shiftedLogNormal(1, -1, 0)).toThrow("variance requires a number of at least 0, got -1");
    expect(() => shiftedLogNormal(Number.NaN, 1, 0)).toThrow("mean requires a finite number");
    expect(() => shiftedLogNormal(1, 1, Infinity)).toThrow("thirdCentral requires a finite number");
  });
});

/** Closed forms of the log-normal: skewness (e^v + 2) sqrt(e^v - 1). */
function momentsOf(match: ShiftedLogNormal) {
  const growth = Math.expm1(match.logSd ** 2);
  return {
    mean: match.shift + match.sign * logNormalMean(match),
    sd: logNormalSd(match),
    skewness: match.sign * (growth + 3) * Math.sqrt(growth),
  };
}
