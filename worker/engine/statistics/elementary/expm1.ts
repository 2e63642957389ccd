import { exp } from "./exp.ts";
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

const HALF_LN2 = 0.34657359027997264;
/** From 56 ln 2 on the 1 taken off is below the last digit. */
const FAR = 38.816242111356935;

// Remez polynomial of (6 / r) ((e^r + 1) / (e^r - 1) - 2 / r) in r^2 / 2.
const Q1 = -0.03333333333333313212;
const Q2 = 0.00158730158725481460165;
const Q3 = -7.93650757867487942473e-5;
const Q4 = 4.00821782732936239552e-6;
const Q5 = -2.01099218183624371326e-7;

/**
 * e^x - 1, accurate near 0, error below one unit in the last place, the same digits in every runtime (see exp).
 * @param x any number; NaN gives NaN
 * Method: FDLIBM, s_expm1.c.
 */
export function expm1(x: number): number {
  if (!(Math.abs(x) <= FAR)) return x < 0 ? -1 : exp(x);
  if (Math.abs(x) < 5.551115123125783e-17) return x;
  const k = Math.abs(x) < HALF_LN2 ? 0 : Math.floor(x * Math.LOG2E + 0.5);
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const r = high - low;
  const half = 0.5 * r;
  const z = r * half;
  const series = 1 + z * (Q1 + z * (Q2 + z * (Q3 + z * (Q4 + z * Q5))));
  const t = 3 - series * half;
  const e = z * ((series - t) / (6 - r * t));
  if (k === 0) return r - (r * e - z);
  const lost = high - r - low;
  return scaled(k, r, r * (e - lost) - lost - z);
}

/** 2^k (1 + r - e) - 1, so ordered that no digit is lost. */
function scaled(k: number, r: number, e: number): number {
  if (k === -1) return 0.5 * (r - e) - 0.5;
  if (k === 1) return r < -0.25 ? -2 * (e - (r + 0.5)) : 1 + 2 * (r - e);
  if (k < -1) return timesPowerOfTwo(1 - (e - r), k) - 1;
  if (k < 20) return timesPowerOfTwo(1 - powerOfTwo(-k) - (e - r), k);
  return timesPowerOfTwo(r - (e + powerOfTwo(-k)) + 1, k);
}
