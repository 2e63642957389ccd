import { DomainError } from "../domainError.ts";
import type { PricedAttributes } from "./saleDescription.ts";
import type { BikeClass, RestorationInterest, ValueTerm } from "./valueTables.ts";

/** What a class of bikes is told by. */
export type ClassedAttributes = Pick<
  PricedAttributes,
  "category" | "componentTier" | "era" | "frameMaterial"
>;

/** Whether a bike belongs to a class: every list that is not empty names it. */
export function belongs(bikeClass: BikeClass, bike: ClassedAttributes): boolean {
  return (
    takes(bikeClass.tiers, bike.componentTier) &&
    takes(bikeClass.categories, bike.category) &&
    takes(bikeClass.materials, bike.frameMaterial) &&
    takes(bikeClass.eras, bike.era)
  );
}

/** Whether a term of the regression holds for a bike of the given originality (0 to 1). */
export function termHolds(term: ValueTerm, bike: PricedAttributes, originality: number): boolean {
  return (
    belongs(term, bike) &&
    takes(term.drivetrains, bike.drivetrain) &&
    takes(term.stepThrough, bike.stepThrough) &&
    originality >= term.originalityFrom
  );
}

/**
 * The share of the premium for restoration, polish and photographs that buyers of this kind of bike pay, 0 to 1:
 * all of it where bikes are bought for themselves, a part where they are bought as transport. Common practice, no source.
 */
export function restorationInterest(interest: RestorationInterest, bike: ClassedAttributes): number {
  return interest.full.some((bikeClass) => belongs(bikeClass, bike)) ? 1 : interest.otherwise;
}

/** Refuses a category that the tables do not price. */
export function requirePriced(category: string, priced: readonly string[]): void {
  if (priced.includes(category)) return;
  throw new DomainError("out-of-domain", "category", category, `one of ${priced.join(", ")}`);
}

function takes(list: readonly string[], value: string): boolean {
  return list.length === 0 || list.includes(value);
}
