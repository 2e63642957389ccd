import { holds } from "../bicycle.ts";
import type { Position } from "../inspection/finding.ts";
import type { ThreePoint } from "../quantity.ts";
import { pertMean, pertSd } from "../statistics/pert.ts";
import { type Bench, faultAt, stands } from "./bench.ts";
import { type Moments, NOTHING, sum, times } from "./moments.ts";
import type { Operation, PartUse, Step, Variant } from "./operation.ts";
import type { Part } from "./part.ts";
import { expectedPrice } from "./partPrice.ts";
import { COMPLETION, remediesAt } from "./serviceIndex.ts";

/** A wheel's place, or the whole bike. */
export type Place = "bike" | "front" | "rear";

/** A part, dose or service that a task uses, with its price here. */
export interface Purchase {
  readonly part: Part;
  readonly quantity: number;
  readonly unitPrice: Moments;
}

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
export function isApplicable(operation: Operation, bench: Bench): boolean {
  return (
    holds(operation.onlyIf, bench.attributes) &&
    !operation.notOnMaterials.includes(bench.attributes.frameMaterial)
  );
}

/**
 * The smaller job where every fault that calls for the operation allows it: a loose bearing is adjusted, but is opened where the
 * races are worn as well.
 */
export function variantFor(operation: Operation, bench: Bench): Variant | null {
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

/** Moments of a three-point estimate by the PERT rule. */
export function threePointMoments(estimate: ThreePoint): Moments {
  return { mean: pertMean(estimate), variance: pertSd(estimate) ** 2 };
}

export function buildTask(operation: Operation, place: Place, bench: Bench): Task {
  const variant = variantFor(operation, bench);
  // An operation for the pair takes half its minutes and parts at one wheel.
  const share = operation.per === "pair" ? 0.5 : 1;
  const purchases = (variant?.uses ?? operation.uses).flatMap((use) => purchaseOf(use, share, place, bench));
  if (operation.id === COMPLETION) purchases.push(...bench.missingParts.map((id) => missingPart(id, bench)));
  return {
    operation,
    place,
    variant,
    name: variant?.name ?? operation.name,
    minutes: ownMinutes(operation, variant, share, bench),
    purchases,
    money: purchases.reduce(
      (total, { unitPrice, quantity }) => sum(total, times(unitPrice, quantity)),
      NOTHING,
    ),
  };
}

function ownMinutes(operation: Operation, variant: Variant | null, share: number, bench: Bench): Moments {
  const { sellingMinutes } = bench.workshop;
  if (operation.selling && sellingMinutes !== null) {
    // The user's own figure is spread over the operations of selling in proportion to their likely minutes.
    const all = [...bench.index.operations.values()].filter(({ selling }) => selling);
    const likely = all.reduce((total, { minutes }) => total + minutes.likely, 0);
    return { mean: (sellingMinutes * operation.minutes.likely) / likely, variance: 0 };
  }
  const own = times(threePointMoments(variant?.minutes ?? operation.minutes), share);
  const posting = operation.sellsParts ? bench.partsSellingMinutes : 0;
  const hunting =
    operation.id === COMPLETION ? bench.huntMinutesPerMissingPart * bench.missingParts.length : 0;
  return { mean: own.mean + posting + hunting, variance: own.variance };
}

function missingPart(id: string, bench: Bench): Purchase {
  const part = bench.index.parts.get(id)!;
  const unitPrice = expectedPrice(part, bench.attributes.componentTier, bench.workshop.partPrices);
  return { part, quantity: 1, unitPrice };
}

function purchaseOf(use: PartUse, share: number, place: Place, bench: Bench): Purchase[] {
  if (!holds(use.when, bench.attributes)) return [];
  if (use.onlyAt.length > 0 && !use.onlyAt.some((match) => stands(bench, match))) return [];
  const instead = use.instead.find(
    ({ when, at, position }) =>
      holds(when, bench.attributes) &&
      (at.length === 0 || at.some((match) => stands(bench, match))) &&
      (position === null || position === place),
  );
  const part = bench.index.parts.get(instead?.part ?? use.part)!;
  const quantity = (instead?.quantity ?? use.quantity) * share;
  const unitPrice = expectedPrice(part, bench.attributes.componentTier, bench.workshop.partPrices);
  return quantity === 0 ? [] : [{ part, quantity, unitPrice }];
}

/** Steps of a task with all that they imply, of its own wheel only, and only those this bike has. */
export function stepsAt(task: Task, bench: Bench): readonly Step[] {
  const steps = new Set<Step>();
  for (const id of task.variant?.steps ?? task.operation.steps) {
    for (const step of bench.index.closure.get(id)!) {
      const here = task.place === "bike" || step.position === null || step.position === task.place;
      if (here && holds(step.onlyIf, bench.attributes)) steps.add(step);
    }
  }
  return [...steps];
}
