/** Names of what is told of a find beside its kind, set side by side. */
export const DESCRIBED_ORIGINALITY = "Originality";
export const DESCRIBED_DESIRABILITY = "Sought after";
export const DESCRIBED_TYRE = "Tyre marking";
export const DESCRIBED_SPROCKETS = "Sprockets at the back";
export const DESCRIBED_MONTH = "Month of sale";

/** "0.7 of 1": a share that lies between two of the choices. */
export function shareOfOne(value: number): string {
  return `${value} of 1`;
}
