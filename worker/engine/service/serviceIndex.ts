import type { Tier } from "../bicycle.ts";
import type { CheckId, LevelId } from "../inspection/check.ts";
import type { Moments } from "./moments.ts";
import type { CourseId, Operation, OperationId, Remedy, Step, StepId } from "./operation.ts";
import { COURSES } from "./operation.ts";
import type { Part, PartId, Tool } from "./part.ts";
import { pricesByTier } from "./partPrice.ts";
import type { Resource } from "./resource.ts";
import type { ServiceTables } from "./serviceTables.ts";
import { stepResource } from "./stepResource.ts";
import { workingOrder } from "./workingOrder.ts";

/** The service tables with their look-ups, compiled once. */
export interface ServiceIndex {
  readonly operations: ReadonlyMap<OperationId, Operation>;
  /** Place in the order of work. */
  readonly place: ReadonlyMap<OperationId, number>;
  readonly steps: ReadonlyMap<StepId, Step>;
  /** The steps of an operation or variant, by its own list of them, and all that they imply, each once. */
  readonly closure: ReadonlyMap<readonly StepId[], readonly Step[]>;
  readonly stepResources: ReadonlyMap<Step, Resource>;
  readonly remedies: ReadonlyMap<CheckId, ReadonlyMap<LevelId, readonly Remedy[]>>;
  /** Checks that other faults can explain. */
  readonly symptomatic: ReadonlySet<CheckId>;
  readonly parts: ReadonlyMap<PartId, Part>;
  /** Expected prices, each as it is bought for a resale bike of the tier. */
  readonly prices: ReadonlyMap<Part, Readonly<Record<Tier, Moments>>>;
  readonly tools: ReadonlyMap<string, Tool>;
  readonly always: Readonly<Record<CourseId, readonly Operation[]>>;
  readonly polishing: readonly Operation[];
  /** Tests with a fee whose outcome decides. */
  readonly testing: readonly Operation[];
  /** Second pair of eyes on safety-critical work beyond the user's skill. */
  readonly supervision: Operation;
  /** Fits the parts that are missing. */
  readonly completion: Operation;
}

/** Operations with a part to play beyond their row; the loader refuses tables without them. */
export const SUPERVISION: OperationId = "paid-safety-check";
export const COMPLETION: OperationId = "complete-fittings";

/** Rows on what cures a check at a level, for whatever bike. */
export function remediesAt(
  { remedies }: Pick<ServiceIndex, "remedies">,
  check: CheckId,
  level: LevelId,
): readonly Remedy[] {
  return remedies.get(check)?.get(level) ?? NO_ROWS;
}

const NO_ROWS: readonly Remedy[] = [];

export function compileService(tables: ServiceTables): ServiceIndex {
  const steps = new Map(tables.steps.map((step) => [step.id, step]));
  const remedies = new Map<CheckId, Map<LevelId, Remedy[]>>();
  for (const remedy of tables.remedies) {
    const levels = remedies.get(remedy.check) ?? new Map<LevelId, Remedy[]>();
    remedies.set(remedy.check, levels.set(remedy.level, [...(levels.get(remedy.level) ?? []), remedy]));
  }
  const always = Object.fromEntries(
    COURSES.map((course) => [course, tables.operations.filter(({ alwaysIn }) => alwaysIn.includes(course))]),
  ) as unknown as Record<CourseId, readonly Operation[]>;
  return {
    operations: new Map(tables.operations.map((operation) => [operation.id, operation])),
    place: workingOrder(tables.operations),
    steps,
    closure: closures(tables.operations, steps),
    stepResources: new Map(tables.steps.map((step) => [step, stepResource(step)])),
    remedies,
    symptomatic: new Set(tables.remedies.flatMap(({ check, causes }) => (causes.length > 0 ? [check] : []))),
    parts: new Map(tables.parts.map((part) => [part.id, part])),
    prices: new Map(tables.parts.map((part) => [part, pricesByTier(part)])),
    tools: new Map(tables.tools.map((tool) => [tool.id, tool])),
    always,
    supervision: tables.operations.find(({ id }) => id === SUPERVISION)!,
    completion: tables.operations.find(({ id }) => id === COMPLETION)!,
    testing: tables.operations.filter(({ tests }) => tests.length > 0),
    polishing: tables.operations.filter(({ effect }) => effect.polishes),
  };
}

/** Every list of steps with all that they imply, each step once. */
function closures(operations: readonly Operation[], steps: ReadonlyMap<StepId, Step>) {
  const lists = operations.flatMap((operation) => [operation, ...operation.variants].map((one) => one.steps));
  return new Map(
    lists.flatMap((list) =>
      list === null
        ? []
        : [[list, [...new Set(list.flatMap((id) => closureOf(steps.get(id)!, steps)))]] as const],
    ),
  );
}

function closureOf(step: Step, steps: ReadonlyMap<StepId, Step>): readonly Step[] {
  const seen = new Set<Step>();
  const queue = [step];
  for (let next = queue.pop(); next; next = queue.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    for (const id of next.implies) queue.push(steps.get(id)!);
  }
  return [...seen];
}
