import { DomainError } from "../domainError.ts";
import { exp } from "./elementary/exp.ts";
import { log } from "./elementary/log.ts";
import { rational } from "./rational.ts";

const ONE_OVER_SQRT_TWO_PI = 0.3989422804014327;
const SQRT_32 = Math.sqrt(32);

/** Density of the standard normal at z: exp(-z^2/2) / sqrt(2 pi). */
export function normalDensity(z: number): number {
  return ONE_OVER_SQRT_TWO_PI * exp(-0.5 * z * z);
}

// Cody, "Rational Chebyshev approximations for the error function", Math. Comp. 23 (1969) 631-637, in the form for
// the normal distribution of Cody, ACM TOMS 19 (1993) 22-32, algorithm 715. Lowest power first.
const CENTRE = [
  [18154.98125334356, 1067.6894854603709, 161.02823106855587, 2.2352520354606837, 0.06568233791820745],
  [45507.78933502673, 10260.932208618979, 976.0985517377767, 47.202581904688245, 1],
] as const;
const SHOULDER = [
  [
    9842.714838383978, 11602.65143764735, 6848.190450536283, 2494.5375852903726, 597.2702763948002,
    93.50665613217785, 8.883149794388377, 0.39894151208813466, 1.0765576773720192e-8,
  ],
  [
    19685.429676859992, 38912.00328609327, 34900.95272114598, 18615.571640885097, 6485.558298266761,
    1519.3775994075547, 235.387901782625, 22.266688044328117, 1,
  ],
] as const;
const TAIL = [
  [
    0.000029112874951168793, 0.0014216191932278934, 0.022235277870649807, 0.12740116116024736,
    0.215898534057957, 0.023073441764940174,
  ],
  [
    0.00007297515550839662, 0.0037823963320275824, 0.06598813786892856, 0.4682382124808651, 1.284260096144911,
    1,
  ],
] as const;

/**
 * Chance that a standard normal stays at or below z; relative error near 1e-15 in the lower tail too, down to underflow.
 * @param z any number; infinities give 0 and 1
 * Method: Cody 1969.
 */
export function normalCdf(z: number): number {
  const size = Math.abs(z);
  if (size <= 0.67448975) {
    const square = z * z;
    return 0.5 + rational(CENTRE[0], CENTRE[1], square, z);
  }
  const tail = upperTail(size);
  return z < 0 ? tail : 1 - tail;
}

/**
 * The same where the density at z is at hand: one exponential in place of three. Relative error up to z^2 / 2 rounding errors more.
 * @param density normalDensity(z)
 */
export function normalCdfGiven(z: number, density: number): number {
  const size = Math.abs(z);
  if (size <= 0.67448975) return normalCdf(z);
  const tail = size > SQRT_32 ? upperTail(size) : (density / ONE_OVER_SQRT_TWO_PI) * shoulder(size);
  return z < 0 ? tail : 1 - tail;
}

function shoulder(z: number): number {
  return rational(SHOULDER[0], SHOULDER[1], z, 1);
}

function upperTail(z: number): number {
  if (z > 38.6) return 0;
  // exp(-z^2/2) in two factors: z rounded to sixteenths squares exactly, so the rounding of z^2 does no harm.
  const rounded = Math.trunc(z * 16) / 16;
  const rest = (z - rounded) * (z + rounded);
  const exponential = exp(-0.5 * rounded * rounded) * exp(-0.5 * rest);
  if (z <= SQRT_32) return exponential * shoulder(z);
  const inverseSquare = 1 / (z * z);
  const ratio = rational(TAIL[0], TAIL[1], inverseSquare, inverseSquare);
  return (exponential * (ONE_OVER_SQRT_TWO_PI - ratio)) / z;
}

// Wichura, "Algorithm AS 241: the percentage points of the normal distribution", Applied Statistics 37 (1988) 477-484.
const MIDDLE = [
  [
    3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
    67265.7709270087, 33430.57558358813, 2509.0809287301227,
  ],
  [
    1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
    28729.085735721943, 5226.495278852546,
  ],
] as const;
const NEAR = [
  [
    1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
    0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
  ],
  [
    1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
    0.0005475938084995345, 1.0507500716444169e-9,
  ],
] as const;
const FAR = [
  [
    6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
    0.0012426609473880784, 0.000027115555687434876, 2.0103343992922881e-7,
  ],
  [
    1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
    0.000018463183175100548, 1.421511758316446e-7, 2.0442631033899397e-15,
  ],
] as const;

/**
 * The z that a standard normal stays below with the given probability; relative error near 1e-16.
 * @param probability 0 to 1; 0 and 1 give the infinities
 * @throws DomainError outside 0 to 1
 * Method: Wichura 1988, AS 241 (PPND16).
 */
export function normalQuantile(probability: number): number {
  if (!(probability >= 0 && probability <= 1)) {
    throw new DomainError("out-of-domain", "probability", probability, "a number from 0 to 1");
  }
  const centred = probability - 0.5;
  if (Math.abs(centred) <= 0.425) {
    const square = 0.180625 - centred * centred;
    return rational(MIDDLE[0], MIDDLE[1], square, centred);
  }
  const tail = centred < 0 ? probability : 1 - probability;
  if (tail === 0) return centred < 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const depth = Math.sqrt(-log(tail));
  const [coefficients, at] = depth <= 5 ? [NEAR, depth - 1.6] : [FAR, depth - 5];
  const size = rational(coefficients[0], coefficients[1], at, 1);
  return centred < 0 ? -size : size;
}
