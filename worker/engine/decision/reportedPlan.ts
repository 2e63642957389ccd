import type { CheckId } from "../inspection/check.ts";
import { strongerNeed } from "../service/fault.ts";
import type { Moments } from "../service/moments.ts";
import { mergePurchases } from "../service/stock.ts";
import type { PlannedTask, WorkPlan } from "../service/workPlan.ts";
import { exp } from "../statistics/elementary/exp.ts";
import { squared } from "../statistics/elementary/powers.ts";
import { type LogNormal, logNormalFromMean, logNormalQuantile } from "../statistics/logNormal.ts";
import type { PlannedOperation, PlannedPart, ReportedPlan, Spread, StopLimit } from "./appraisal.ts";
import type { SettledRequest } from "./settledRequest.ts";
import type { OpenCourse } from "./weighedCourse.ts";

/** A course's plan as it is told: times at the user's speed, prices for each line, what each operation is for. */
export function reportPlan({ plan, allowance }: OpenCourse, { workshop }: SettledRequest): ReportedPlan {
  const speed = workshop.speedFactor;
  const purchases = mergePurchases(plan.tasks.flatMap((task) => task.purchases));
  const extras = plan.extras.map(
    ({ kind, name, unit, money }): PlannedPart => ({
      part: kind,
      name,
      unit,
      quantity: 1,
      price: money.mean,
      kind,
    }),
  );
  const minutes = plan.minutes;
  const square = squared(speed) * exp(squared(workshop.speedSpread));
  const paced = {
    mean: speed * minutes.mean,
    variance: square * minutes.variance + squared(minutes.mean) * (square - squared(speed)),
  };
  return {
    operations: plan.tasks.map((task) => reportTask(task, plan, speed, workshop.skill)),
    sharedSteps: plan.steps.map((step) => ({
      step: step.step.id,
      name: step.step.name,
      minutes: step.minutes.mean * speed,
    })),
    shoppingList: [...purchases.flatMap(toBuy), ...extras],
    minutes: spread(paced),
    cost: spread(plan.cash),
    allowance: { money: allowance.money, minutes: allowance.minutes * speed },
    disclosed: plan.disclosed.map(({ check }) => check.id),
    stopLimits: plan.tasks.flatMap((task) => stopLimitOf(task, speed)),
  };
}

function stopLimitOf({ operation, name, openEnd }: PlannedTask, speed: number): readonly StopLimit[] {
  if (openEnd === null) return [];
  const { limit, releaseChance, worth } = openEnd;
  return [{ operation: operation.id, name, minutes: limit * speed, releaseChance, fallback: -worth }];
}

function reportTask(task: PlannedTask, plan: WorkPlan, speed: number, skill: number): PlannedOperation {
  const { operation, because } = task;
  const beyond = operation.safetyCritical && operation.skill > skill;
  return {
    operation: operation.id,
    name: task.name,
    position: task.position,
    minutes: task.minutes.mean * speed,
    parts: task.purchases.map(line),
    because: [...new Set<CheckId>(because.map(({ check }) => check.id))],
    kind: kindOf(task, plan),
    assumed: because.length > 0 && because.every(({ assumed }) => assumed),
    doneBy: operation.doneBy === "service" ? "service" : beyond ? "mechanic" : "self",
    torque: operation.torque,
    proof: operation.proof,
    redecide: operation.failure?.redecide ?? false,
  };
}

/** Work that serves no fault belongs to the course: it is required, but for the polish of a restoration. */
function kindOf({ because, operation }: PlannedTask, plan: WorkPlan): PlannedOperation["kind"] {
  if (because.length === 0)
    return operation.effect.polishes && plan.course === "restore" ? "optional" : "required";
  return because.map(({ need }) => need).reduce(strongerNeed);
}

function line({ part, quantity, unitPrice }: PlannedTask["purchases"][number]): PlannedPart {
  return {
    part: part.id,
    name: part.name,
    unit: part.unit,
    quantity,
    price: unitPrice.mean,
    kind: part.kind,
  };
}

/** What is not at hand. */
function toBuy(purchase: PlannedTask["purchases"][number]): readonly PlannedPart[] {
  const { quantity, atHand, buyPrice } = purchase;
  return quantity > atHand ? [{ ...line(purchase), quantity: quantity - atHand, price: buyPrice.mean }] : [];
}

/** Mean and 10, 50, 90 % points of a positive quantity, matched by a log-normal. */
function spread({ mean, variance }: Moments): Spread {
  if (mean <= 0) return { mean: 0, p10: 0, p50: 0, p90: 0 };
  const fitted: LogNormal = logNormalFromMean(mean, Math.sqrt(Math.max(0, variance)));
  const at = (p: number) => logNormalQuantile(fitted, p);
  return { mean, p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}
