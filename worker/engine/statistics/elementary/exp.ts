import { LN2_HIGH, LN2_LOW } from "./ln2.ts";
import { powerOfTwo, timesPowerOfTwo } from "./powersOfTwo.ts";

/*
 * Method and coefficients from FDLIBM:
 * ====================================================
 * Copyright (C) 1993, 2004 by Sun Microsystems, Inc. All rights reserved.
 *
 * Developed at SunPro, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this
 * software is freely granted, provided that this notice
 * is preserved.
 * ====================================================
 */

/** Past these the result is Infinity or 0. */
const HIGHEST = 709.782712893383973096;
const LOWEST = -745.13321910194110842;

// Remez polynomial of r (e^r + 1) / (e^r - 1) in r^2 on |r| <= ln 2 / 2.
const P1 = 0.166666666666666019037;
const P2 = -0.00277777777770155933842;
const P3 = 6.61375632143793436117e-5;
const P4 = -1.6533902205465251539e-6;
const P5 = 4.13813679705723846039e-8;

/**
 * e^x, error below one unit in the last place, the same digits in every runtime: ECMA-262 (21.3.2) leaves those of Math.exp to the runtime's maker,
 * while + - x / are exactly specified.
 * @param x any number; NaN gives NaN
 * Method: x = k ln 2 + r, e^r by a rational approximation (FDLIBM, e_exp.c; after Cody & Waite, Software Manual for the Elementary Functions, 1980).
 */
export function exp(x: number): number {
  // Here 2^k holds all digits: the one branch nearly every call takes.
  if (x > -708 && x < 709) {
    const k = Math.floor(x * Math.LOG2E + 0.5);
    return expOfRest(x - k * LN2_HIGH, k * LN2_LOW) * powerOfTwo(k);
  }
  if (!(x <= HIGHEST)) return x > HIGHEST ? Infinity : x;
  if (x < LOWEST) return 0;
  const k = Math.floor(x * Math.LOG2E + 0.5);
  return timesPowerOfTwo(expOfRest(x - k * LN2_HIGH, k * LN2_LOW), k);
}

/** e^(high - low), for at most ln 2 / 2 in size. */
function expOfRest(high: number, low: number): number {
  const r = high - low;
  const t = r * r;
  const u = t * t;
  const c = r - (t * (P1 + t * P2) + t * u * (P3 + t * P4 + u * P5));
  return 1 - (low - (r * c) / (2 - c) - high);
}
