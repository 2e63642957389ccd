import { DomainError } from "../domainError.ts";
import { exp } from "./elementary/exp.ts";
import { log, log1p } from "./elementary/log.ts";
import { incompleteBeta } from "./incompleteBeta.ts";
import { logGamma, logGammaDrop } from "./logGamma.ts";
import { mixtureQuantile } from "./mixtureQuantile.ts";
import { normalQuantile } from "./standardNormal.ts";

/** log B(v/2, 1/2), which density and chance of Student's t share: worked out once where many of them are asked for. */
export function studentTLogBeta(degreesOfFreedom: number): number {
  return logGamma(0.5) + logGammaDrop(degreesOfFreedom / 2, 0.5);
}

/**
 * Density of Student's t at t with the given degrees of freedom (above 0, need not be whole).
 * @param logBeta studentTLogBeta(degreesOfFreedom)
 */
export function studentTDensity(
  t: number,
  degreesOfFreedom: number,
  logBeta = studentTLogBeta(degreesOfFreedom),
): number {
  const logFront = logBeta + 0.5 * log(degreesOfFreedom);
  return exp(-logFront - ((degreesOfFreedom + 1) / 2) * log1p((t * t) / degreesOfFreedom));
}

/**
 * Chance that Student's t stays at or below t.
 * @param degreesOfFreedom above 0, need not be whole
 * @param logBeta studentTLogBeta(degreesOfFreedom)
 * @throws DomainError for degrees of freedom not above 0
 * Formula: 1/2 I_{v/(v + t^2)}(v/2, 1/2) in the lower tail (Abramowitz & Stegun 26.7.1).
 */
export function studentTCdf(
  t: number,
  degreesOfFreedom: number,
  logBeta = studentTLogBeta(degreesOfFreedom),
): number {
  requireDegrees(degreesOfFreedom);
  if (t === 0) return 0.5;
  const sum = degreesOfFreedom + t * t;
  const tail = Number.isFinite(sum)
    ? 0.5 * incompleteBeta(degreesOfFreedom / sum, degreesOfFreedom / 2, 0.5, (t * t) / sum, logBeta)
    : 0;
  return t < 0 ? tail : 1 - tail;
}

/**
 * The t that Student's t stays below with the given probability, to about 1e-14 relative.
 * @param probability above 0 and below 1
 * @throws DomainError for a probability or degrees of freedom outside their domain
 */
export function studentTQuantile(probability: number, degreesOfFreedom: number): number {
  requireDegrees(degreesOfFreedom);
  if (!(probability > 0 && probability < 1)) {
    throw new DomainError("out-of-domain", "probability", probability, "a number above 0 and below 1");
  }
  if (probability === 0.5) return 0;
  if (probability > 0.5) return -studentTQuantile(1 - probability, degreesOfFreedom);
  // The tails of t are heavier than the normal's: the quantile lies at or beyond it.
  const normal = normalQuantile(probability);
  const logBeta = studentTLogBeta(degreesOfFreedom);
  const cdf = (t: number) => studentTCdf(t, degreesOfFreedom, logBeta);
  const rough = mixtureQuantile(cdf, probability, 2 * normal, normal);
  const miss = cdf(rough) - probability;
  return rough - miss / studentTDensity(rough, degreesOfFreedom, logBeta);
}

function requireDegrees(degreesOfFreedom: number): void {
  if (degreesOfFreedom > 0) return;
  throw new DomainError("out-of-domain", "degreesOfFreedom", degreesOfFreedom, "a number above 0");
}
