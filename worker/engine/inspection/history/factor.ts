/** What may have happened to a bike that nobody saw: four yes/no factors, independent before anything is looked at. */
export const FACTORS = ["weather", "mileage", "neglect", "crash"] as const;
export type Factor = (typeof FACTORS)[number];

/**
 * A history is a class: which of the four factors happened. Bit f of the class's number is set where factor f did, so class 0 is a bike
 * that none of them touched.
 */
export const CLASS_COUNT = 1 << FACTORS.length;

/** Whether a class holds a factor. */
export function holdsFactor(historyClass: number, factor: number): boolean {
  return ((historyClass >> factor) & 1) === 1;
}
