import { holds } from "../bicycle.ts";
import type { Position } from "../inspection/finding.ts";
import { type Bench, faultAt, type Patient, stands } from "./bench.ts";
import { type Moments, NOTHING, threePointMoments, times } from "./moments.ts";
import type { Operation, PartUse, Step, Variant } from "./operation.ts";
import type { PartId } from "./part.ts";
import { expectedPrice } from "./partPrice.ts";
import { COMPLETION, remediesAt } from "./serviceIndex.ts";
import { type Purchase, purchaseFrom, spentOn } from "./stock.ts";
import type { OpenEnd } from "./stopLimit.ts";

/** A wheel's place, or the whole bike. */
export type Place = "bike" | "front" | "rear";

/** One operation at one place on this bike, in the variant that its faults call for. */
export interface Task {
  readonly operation: Operation;
  readonly place: Place;
  readonly variant: Variant | null;
  readonly name: string;
  /** At speed 1, without dismantling. */
  readonly minutes: Moments;
  readonly purchases: readonly Purchase[];
  readonly money: Moments;
  /** Where its end is open and it is given up in time; see givenUpInTime. */
  readonly openEnd: OpenEnd | null;
}

const WHOLE: readonly Place[] = ["bike"];
const FRONT: readonly Place[] = ["front"];
const REAR: readonly Place[] = ["rear"];
const BOTH: readonly Place[] = ["front", "rear"];

/** Places at which an operation is done for a fault: per-bike work once, wheel work at each wheel that the fault concerns. */
export function placesFor(operation: Operation, position: Position): readonly Place[] {
  if (operation.per === "bike") return WHOLE;
  if (position === "front") return FRONT;
  return position === "rear" ? REAR : BOTH;
}

/** Whether the operation can be done on this bike at all. */
export function isApplicable(operation: Operation, bench: Pick<Patient, "attributes">): boolean {
  return (
    holds(operation.onlyIf, bench.attributes) &&
    !operation.notOnMaterials.includes(bench.attributes.frameMaterial)
  );
}

/**
 * The smaller job where every fault that calls for the operation allows it: a loose bearing is adjusted, but is opened where the
 * races are worn as well.
 */
function variantFor(operation: Operation, bench: Patient): Variant | null {
  const variant = operation.variants.find(
    ({ at, when }) => holds(when, bench.attributes) && faultAt(bench, at) !== undefined,
  );
  if (!variant) return null;
  const callers = bench.faults.filter(({ check, level }) =>
    remediesAt(bench.index, check.id, level.id).some(({ options }) =>
      options.some((option) => option.includes(operation.id)),
    ),
  );
  const all = callers.every(
    ({ check, level }) => check.id === variant.at.check && variant.at.levels.includes(level.id),
  );
  return all ? variant : null;
}

/** A task that is done takes nothing more. */
export function buildTask(operation: Operation, place: Place, bench: Bench): Task {
  const variant = variantFor(operation, bench);
  const done = bench.done.has(operation.id);
  const purchases = done
    ? []
    : partsUsed(operation, place, bench).map(({ part, quantity }) => purchaseFor(part, quantity, bench));
  return {
    operation,
    place,
    variant,
    name: variant?.name ?? operation.name,
    minutes: done ? NOTHING : ownMinutes(operation, variant, bench),
    purchases,
    money: spentOn(purchases),
    openEnd: null,
  };
}

/** Parts, doses and services that an operation uses at a place. */
export function partsUsed(operation: Operation, place: Place, patient: Patient): readonly PartQuantity[] {
  const variant = variantFor(operation, patient);
  const used: PartQuantity[] = [];
  for (const use of variant?.uses ?? operation.uses) {
    const one = usedFor(use, shareAtPlace(operation), place, patient);
    if (one !== null) used.push(one);
  }
  if (operation.id === COMPLETION) for (const part of patient.missingParts) used.push({ part, quantity: 1 });
  return used;
}

export interface PartQuantity {
  readonly part: PartId;
  readonly quantity: number;
}

/** An operation for the pair takes half its minutes and parts at one wheel. */
function shareAtPlace({ per }: Operation): number {
  return per === "pair" ? 0.5 : 1;
}

function ownMinutes(operation: Operation, variant: Variant | null, bench: Bench): Moments {
  const { sellingMinutes } = bench.workshop;
  if (operation.selling && sellingMinutes !== null) {
    // The user's own figure is spread over the operations of selling in proportion to their likely minutes.
    const all = [...bench.index.operations.values()].filter(({ selling }) => selling);
    const likely = all.reduce((total, { minutes }) => total + minutes.likely, 0);
    return { mean: (sellingMinutes * operation.minutes.likely) / likely, variance: 0 };
  }
  const own = times(threePointMoments(variant?.minutes ?? operation.minutes), shareAtPlace(operation));
  const posting = operation.sellsParts ? bench.partsSellingMinutes : 0;
  const hunting =
    operation.id === COMPLETION ? bench.huntMinutesPerMissingPart * bench.missingParts.length : 0;
  return { mean: own.mean + posting + hunting, variance: own.variance };
}

function purchaseFor(id: PartId, quantity: number, { index, attributes, workshop, stock }: Bench): Purchase {
  const part = index.parts.get(id)!;
  const tier = attributes.componentTier;
  const price = expectedPrice(part, tier, workshop.partPrices, index.prices.get(part)![tier]);
  return purchaseFrom(stock, part, quantity, price);
}

function usedFor(use: PartUse, share: number, place: Place, bench: Patient): PartQuantity | null {
  if (!holds(use.when, bench.attributes)) return null;
  if (use.onlyAt.length > 0 && !use.onlyAt.some((match) => stands(bench, match))) return null;
  const instead = use.instead.find(
    ({ when, at, position }) =>
      holds(when, bench.attributes) &&
      (at.length === 0 || at.some((match) => stands(bench, match))) &&
      (position === null || position === place),
  );
  const quantity = (instead?.quantity ?? use.quantity) * share;
  return quantity === 0 ? null : { part: instead?.part ?? use.part, quantity };
}

/** Steps of a task with all that they imply, of its own wheel only, and only those this bike has; none where it is done. */
export function stepsAt({ operation, variant, place }: Task, bench: Bench): readonly Step[] {
  if (bench.done.has(operation.id)) return [];
  const all = bench.index.closure.get(variant?.steps ?? operation.steps)!;
  return all.filter((step) => {
    const here = place === "bike" || step.position === null || step.position === place;
    return here && holds(step.onlyIf, bench.attributes);
  });
}
