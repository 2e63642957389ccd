import type { Position } from "../inspection/finding.ts";
import { chooseSlots, type Slot } from "../optimization/slotChoice.ts";
import type { Money } from "../quantity.ts";
import type { Bench } from "./bench.ts";
import { blockerOf, type Cure, curesInPassing, curesOf, expand } from "./cure.ts";
import type { Fault } from "./fault.ts";
import type { Ledger, Resource } from "./ledger.ts";
import type { Operation } from "./operation.ts";
import { separateSymptoms } from "./symptom.ts";
import { buildWorkPlan, type WorkPlan } from "./workPlan.ts";

/** What the sale makes of condition, as far as planning depends on it. */
export interface Stakes {
  /** Expected takings after haggling and fee when penalties summing to `gain` are taken away. Never falls. */
  readonly takings: (gain: number) => Money;
  /** The most that taking a penalty away can ever add to the takings. */
  readonly largestMarginal: (penalty: number) => Money;
  /** Takings lost by paint over the finish. */
  readonly repaintLoss: Money;
  /** Lost where the work ends the frame. */
  readonly frameLoss: Money;
  /** Penalty of paint and metal that are not polished. */
  readonly notPolished: number;
}

export type RideablePlan = { readonly plan: WorkPlan } | { readonly uncurable: Fault };

interface CureSlot {
  readonly fault: Fault;
  readonly cures: readonly Cure[];
  readonly mandatory: boolean;
}

/**
 * The best plan that ends with a bike to ride: required faults cured, needed ones cured or, where that is cheaper, told to the buyer; for
 * a restoration the optional work that earns the user's goal and a polish. Exact: branch and bound over ways to cure each fault, with shared
 * steps paid once (optimization/slotChoice).
 */
export function planRideable(course: "restore" | "make-safe", ledger: Ledger, stakes: Stakes): RideablePlan {
  const { bench } = ledger;
  const { causes, symptoms } = separateSymptoms(bench);
  const slots = causes
    .filter(({ need }) => course === "restore" || need !== "optional")
    .map((fault) => slotOf(fault, ledger));
  const stuck = slots.find(({ fault, cures }) => fault.need === "required" && cures.length === 0);
  if (stuck) return { uncurable: stuck.fault };

  const base = courseWork(course, ledger, slots);
  const open = base.slots.filter(({ cures }) => cures.length > 0);
  // Gains in any case: the polish of a restoration, and symptoms that go with their causes.
  const sure = symptoms.reduce(
    (total, { penalty }) => total + penalty,
    course === "restore" ? stakes.notPolished : 0,
  );
  const solution = chooseSlots({
    slots: open.map((slot) => searchSlot(slot, stakes)),
    cost: Float64Array.from(ledger.resources, (resource) => moneyWorth(resource, bench, stakes)),
    base: base.resources,
    value: (gain) => stakes.takings(gain + sure),
  })!;

  const chosen = open.flatMap((slot, place) => {
    const option = solution.choice[place]!;
    return option < 0 ? [] : [{ fault: slot.fault, cure: slot.cures[option]! }];
  });
  return { plan: assemble(course, ledger, base, chosen, { causes, symptoms }, sure) };
}

function slotOf(fault: Fault, ledger: Ledger): CureSlot {
  const cures = curesOf(fault, ledger);
  const mandatory =
    fault.need === "required" || (fault.need === "needed" && !fault.mayDisclose && cures.length > 0);
  return { fault, cures, mandatory };
}

interface CourseWork {
  readonly resources: readonly number[];
  readonly operations: readonly Operation[];
  readonly slots: readonly CureSlot[];
}

/**
 * Work that belongs to the course whatever is wrong. Where a stuck part is in the way and may be left, the work goes with its cure: a post that
 * is not freed is not greased.
 */
function courseWork(course: "restore" | "make-safe", ledger: Ledger, slots: readonly CureSlot[]): CourseWork {
  const { bench } = ledger;
  const operations = [...bench.index.always[course]];
  if (course === "restore") operations.push(...bench.index.polishing);
  if (bench.missingParts.length > 0) operations.push(bench.index.completion);
  const resources: number[] = [];
  let amended = slots;
  for (const operation of operations) {
    const cure = cheapest(expand([operation.id], WHOLE, ledger, new Set()), ledger);
    const blocker = blockerOf(operation, bench);
    const slot =
      blocker && amended.find(({ fault }) => fault.check.id === blocker.check.id && fault.mayDisclose);
    if (slot && slot.cures.length > 0) {
      const own = expand([operation.id], WHOLE, ledger, new Set([blocker.check.id]))[0];
      if (own) amended = amended.map((other) => (other === slot ? withWork(slot, own) : other));
    } else if (cure) {
      resources.push(...cure.resources);
    }
  }
  return { resources, operations, slots: amended };
}

const WHOLE: Position = "bike";

function withWork(slot: CureSlot, own: Cure): CureSlot {
  const cures = slot.cures.map((cure) => ({
    operations: [...new Set([...cure.operations, ...own.operations])],
    resources: [...new Set([...cure.resources, ...own.resources])],
    repaints: cure.repaints || own.repaints,
  }));
  return { ...slot, cures };
}

function cheapest(cures: readonly Cure[], ledger: Ledger): Cure | undefined {
  const worth = (cure: Cure) =>
    cure.resources.reduce(
      (total, index) => total + moneyWorth(ledger.resources[index]!, ledger.bench, NO_STAKES),
      0,
    );
  return cures.reduce<Cure | undefined>(
    (best, cure) => (!best || worth(cure) < worth(best) ? cure : best),
    undefined,
  );
}

const NO_STAKES = { frameLoss: 0 };

function searchSlot({ fault, cures, mandatory }: CureSlot, stakes: Stakes): Slot {
  return {
    options: cures.map(({ resources }) => resources),
    optionLoss: cures.map(({ repaints }) => (repaints ? stakes.repaintLoss : 0)),
    gain: fault.penalty,
    mandatory,
    largestMarginal: stakes.largestMarginal(fault.penalty),
  };
}

/** Money and the time's worth at the user's goal, expected follow-up of failures included. */
function moneyWorth(resource: Resource, bench: Bench, { frameLoss }: Pick<Stakes, "frameLoss">): Money {
  const { hourlyGoal, speedFactor } = bench.workshop;
  const minutes = resource.minutes.mean + resource.contingency.minutes.mean;
  const money = resource.money.mean + resource.contingency.money.mean + resource.endsFrame * frameLoss;
  return money + (minutes * speedFactor * hourlyGoal) / 60;
}

function assemble(
  course: "restore" | "make-safe",
  ledger: Ledger,
  base: CourseWork,
  chosen: readonly { fault: Fault; cure: Cure }[],
  { causes, symptoms }: ReturnType<typeof separateSymptoms>,
  sure: number,
): WorkPlan {
  const reasons = new Map<string, Fault[]>();
  for (const { fault, cure } of chosen) {
    for (const id of cure.operations) reasons.set(id, [...(reasons.get(id) ?? []), fault]);
  }
  const resources = new Set([...base.resources, ...chosen.flatMap(({ cure }) => cure.resources)]);
  const picked = new Set(chosen.map(({ fault }) => fault));
  // Work done for another reason may cure a fault that was not planned for: the post that comes out to be greased is freed.
  const besides = causes.filter(
    (fault) =>
      !picked.has(fault) &&
      curesInPassing(fault, ledger).some((cure) => cure.resources.every((index) => resources.has(index))),
  );
  const cured = [...picked, ...besides];
  const left = causes.filter((fault) => !cured.includes(fault));
  return buildWorkPlan(ledger, {
    course,
    resources,
    reasons,
    cured: [...cured, ...symptoms],
    disclosed: left.filter(({ safety, assumed }) => safety === "advisory" && !assumed),
    gain: cured.reduce((total, { penalty }) => total + penalty, sure),
    repaints: chosen.some(({ cure }) => cure.repaints),
  });
}
