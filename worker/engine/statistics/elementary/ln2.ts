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

/** ln 2 in two parts: the first ends in so many zeros that a whole number up to 2000 times it is exact. */
export const LN2_HIGH = 0.69314718036912381649;
export const LN2_LOW = 1.90821492927058770002e-10;
