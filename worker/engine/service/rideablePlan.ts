import { courseWork } from "./courseWork.ts";
import { curesOf } from "./cure.ts";
import { type ChosenCure, chooseCures, usedBy } from "./cureChoice.ts";
import { cureSlots } from "./cureSlot.ts";
import type { Fault } from "./fault.ts";
import type { Ledger } from "./ledger.ts";
import type { Stakes } from "./stakes.ts";
import { buildWorkPlan, type WorkPlan } from "./workPlan.ts";

export type RideablePlan = { readonly plan: WorkPlan } | { readonly uncurable: Fault };

/**
 * The best plan that ends with a bike to ride: required faults cured, needed ones cured or, where that is cheaper, told to the buyer; for
 * a restoration the optional work that earns the user's goal and a polish. Exact (see cureChoice), with shared steps paid once.
 */
export function planRideable(course: "restore" | "make-safe", ledger: Ledger, stakes: Stakes): RideablePlan {
  const { causes, symptoms } = ledger.faults();
  const faced = cureSlots(course, causes, ledger);
  const stuck = faced.find(({ fault, cures }) => fault.need === "required" && cures.length === 0);
  if (stuck) return { uncurable: stuck.fault };

  const { resources: base, slots } = courseWork(course, ledger, faced);
  // Gains in any case: the polish of a restoration, and symptoms that go with their causes.
  const polish = course === "restore" ? stakes.notPolished : 0;
  const sure = symptoms.reduce((total, { penalty }) => total + penalty, polish);
  const problem = { slots: slots.filter(({ cures }) => cures.length > 0), base, sure };
  const chosen = chooseCures(problem, ledger, stakes);
  return { plan: assemble(course, ledger, base, chosen, { causes, symptoms }, sure) };
}

function assemble(
  course: "restore" | "make-safe",
  ledger: Ledger,
  base: readonly number[],
  chosen: readonly ChosenCure[],
  { causes, symptoms }: ReturnType<Ledger["faults"]>,
  sure: number,
): WorkPlan {
  const reasons = new Map<string, Fault[]>();
  for (const { fault, cure } of chosen) {
    for (const id of cure.operations) {
      const served = reasons.get(id);
      if (served) served.push(fault);
      else reasons.set(id, [fault]);
    }
  }
  const resources = usedBy(chosen, base);
  const picked = new Set(chosen.map(({ fault }) => fault));
  // Work done for another reason may cure a fault that was not planned for: the post that comes out to be greased is freed.
  const besides = causes.filter(
    (fault) =>
      !picked.has(fault) &&
      curesOf(fault, ledger).some((cure) => cure.resources.every((index) => resources.has(index))),
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
