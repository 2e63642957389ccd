import type { Check } from "../inspection/check.ts";
import type { Money, Probability } from "../quantity.ts";
import type { Bench } from "./bench.ts";
import { type Cure, curesOf } from "./cure.ts";
import { type Fault, needOf } from "./fault.ts";
import type { Ledger } from "./ledger.ts";
import { remediesAt } from "./serviceIndex.ts";
import { placesFor } from "./task.ts";
import type { PlannedTask, WorkPlan } from "./workPlan.ts";

/** What an unseen fault is weighed against. */
export interface UnseenStakes {
  /** What a penalty on visible condition takes off the takings. */
  readonly toldLoss: (penalty: Probability) => Money;
  /** What a lost frame costs. */
  readonly frameLoss: Money;
}

/** What an unseen level would bring: work, a lower price where it is told to the buyer instead, or the end of the frame. */
export type Consequence =
  | { readonly kind: "nothing" }
  | { readonly kind: "condemned" }
  | { readonly kind: "work"; readonly resources: readonly number[] }
  | { readonly kind: "told"; readonly loss: Money; readonly penalty: Probability }
  | { readonly kind: "spared"; readonly resources: readonly number[] };

const NOTHING_MORE: Consequence = { kind: "nothing" };

/**
 * What one level of an unseen check brings beyond a plan.
 * @param rank of the level
 * @param position the wheel not looked at, where the other one was
 * @param assumed the fault that the plan supposes for this check, if any
 */
export function consequence(
  check: Check,
  rank: number,
  position: "front" | "rear" | undefined,
  assumed: Fault | undefined,
  plan: WorkPlan,
  ledger: Ledger,
  { toldLoss, frameLoss }: UnseenStakes,
): Consequence {
  const { terminal } = check.levels[rank]!;
  if (terminal === "parts-or-recycle" || terminal === "recycle") return { kind: "condemned" };
  if (assumed && rank === assumed.rank) return NOTHING_MORE;
  if (assumed && rank < assumed.rank && check.ordered) return spared(assumed, plan, ledger);
  if (rank === 0) return NOTHING_MORE;
  const fault = hypothetical(check, rank, position, ledger.bench);
  if (fault === null) return NOTHING_MORE;
  const cheapest = cheapestBeyond(fault, plan, ledger, frameLoss);
  if (!cheapest) {
    if (fault.mayDisclose) return { kind: "told", loss: toldLoss(fault.penalty), penalty: fault.penalty };
    return fault.need === "required" && !isSymptom(fault, ledger) ? { kind: "condemned" } : NOTHING_MORE;
  }
  const loss = fault.mayDisclose ? toldLoss(fault.penalty) : Infinity;
  if (loss < cheapest.worth) return { kind: "told", loss, penalty: fault.penalty };
  return { kind: "work", resources: cheapest.resources };
}

/** Symptoms cost what their causes cost, and those are counted on their own. */
function isSymptom(fault: Fault, ledger: Ledger): boolean {
  const rows = remediesAt(ledger.bench.index, fault.check.id, fault.level.id);
  return rows.some(({ causes }) => causes.length > 0);
}

/** The fault that an unseen level would be; null where nothing need be done about it. */
function hypothetical(
  check: Check,
  rank: number,
  wheel: "front" | "rear" | undefined,
  { rearSprockets }: Bench,
): Fault | null {
  const level = check.levels[rank]!;
  const { safety } = level;
  const { need, mayDisclose } = needOf(check, rank, safety, rearSprockets);
  if (need === "optional") return null;
  // The chances are those of the worse wheel, so one wheel has it; the rear one, which is the dearer.
  const position = check.perWheel ? (wheel ?? "rear") : "bike";
  const penalty = level.conditionPenalty;
  return { check, position, level, rank, safety, need, mayDisclose, penalty, assumed: true };
}

interface Work {
  readonly resources: readonly number[];
  readonly worth: Money;
}

/** The cure that costs least beyond the plan, the risk to the frame included. */
function cheapestBeyond(fault: Fault, plan: WorkPlan, ledger: Ledger, frameLoss: Money): Work | null {
  const { hourlyGoal, speedFactor } = ledger.bench.workshop;
  let best: Cure | null = null;
  let least = Infinity;
  for (const cure of curesOf(fault, ledger)) {
    let worth = 0;
    let survives = 1;
    for (const index of cure.resources) {
      if (plan.resources.has(index)) continue;
      const resource = ledger.resources[index]!;
      const minutes = resource.minutes.mean + resource.contingency.minutes.mean;
      worth +=
        resource.money.mean + resource.contingency.money.mean + (minutes * speedFactor * hourlyGoal) / 60;
      survives *= 1 - resource.endsFrame;
    }
    worth += (1 - survives) * frameLoss;
    if (best !== null && !(worth < least)) continue;
    best = cure;
    least = worth;
  }
  if (best === null) return null;
  const resources = best.resources.filter((index) => !plan.resources.has(index));
  return { resources, worth: least };
}

/**
 * What is not spent where the assumed fault turns out to be absent: the tasks that serve nothing else, and the steps, tools and deliveries that no other task
 * takes. What only shows once it is apart is taken apart all the same.
 */
function spared(assumed: Fault, plan: WorkPlan, ledger: Ledger): Consequence {
  const isOwn = ({ because }: PlannedTask) => because.length === 1 && because[0] === assumed;
  const own = new Set<number>();
  const kept = new Set<number>();
  for (const task of plan.tasks) {
    const reveals =
      assumed.check.where === "dismantled" &&
      task.operation.reveals.some(({ check }) => check === assumed.check.id);
    for (const place of placesFor(task.operation, task.position)) {
      const { resources, taskInstead } = ledger.forOperation(task.operation, place);
      for (const index of [...resources, ...taskInstead]) {
        if (!isOwn(task)) kept.add(index);
        else if (reveals && ledger.resources[index]!.kind === "step") kept.add(index);
        else own.add(index);
      }
    }
  }
  const resources = [...plan.resources].filter((index) => own.has(index) && !kept.has(index));
  return resources.length > 0 ? { kind: "spared", resources } : NOTHING_MORE;
}
