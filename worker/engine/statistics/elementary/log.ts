import { exponentOf } from "./exponent.ts";
import { LN2_HIGH, LN2_LOW } from "./ln2.ts";
import { powerOfTwo } from "./powersOfTwo.ts";

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

const TWO_TO_54 = 18014398509481984;
const LEAST_NORMAL = 2.2250738585072014e-308;

// Remez polynomial of (log(1 + s) - log(1 - s) - 2s) / s in s^2, for |s| <= 0.1716.
const L1 = 0.666666666666673513;
const L2 = 0.3999999999940941908;
const L3 = 0.2857142874366239149;
const L4 = 0.2222219843214978396;
const L5 = 0.1818357216161805012;
const L6 = 0.1531383769920937332;
const L7 = 0.1479819860511658591;

/**
 * Natural logarithm, error below one unit in the last place, the same digits in every runtime (see exp).
 * @param x at least 0; 0 gives -Infinity, below 0 NaN
 * Method: x = 2^k (1 + f) with 1 + f between sqrt(1/2) and sqrt(2), log(1 + f) by s = f / (2 + f) (FDLIBM, e_log.c).
 */
export function log(x: number): number {
  if (!(x >= LEAST_NORMAL && x < Infinity)) return atTheEdge(x);
  const k = exponentOf(x);
  return logOf(k, x * powerOfTwo(-k) - 1, 0);
}

function atTheEdge(x: number): number {
  if (x > 0) return x === Infinity ? x : log(x * TWO_TO_54) - 54 * LN2_LOW - 54 * LN2_HIGH;
  return x === 0 ? -Infinity : NaN;
}

/**
 * log(1 + x), accurate near 0, error below one unit in the last place, the same digits in every runtime.
 * @param x at least -1; -1 gives -Infinity, below it NaN
 * Method: FDLIBM, s_log1p.c.
 */
export function log1p(x: number): number {
  if (!(x > -1 && x < Infinity)) return x === -1 ? -Infinity : x === Infinity ? x : NaN;
  // Below 2^-54 the result is x, the sign of 0 included.
  if (Math.abs(x) < 5.551115123125783e-17) return x;
  if (x > -0.29289 && x < 0.41421) return logOf(0, x, 0);
  const u = 1 + x;
  const k = exponentOf(u);
  const f = u * powerOfTwo(-k) - 1;
  // What 1 + x lost in rounding.
  const lost = k > 54 ? 0 : (x >= 1 ? 1 - (u - x) : x - (u - 1)) / u;
  return logOf(k, f, lost);
}

/** k ln 2 + log(1 + f) + rest. */
function logOf(k: number, f: number, rest: number): number {
  const s = f / (2 + f);
  const z = s * s;
  const w = z * z;
  const even = w * (L2 + w * (L4 + w * L6));
  const odd = z * (L1 + w * (L3 + w * (L5 + w * L7)));
  const half = 0.5 * f * f;
  return k * LN2_HIGH - (half - (s * (half + (even + odd)) + (k * LN2_LOW + rest)) - f);
}
