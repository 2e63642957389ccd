import type { Level } from "../inspection/check.ts";
import type { Position } from "../inspection/finding.ts";
import type { Bench } from "./bench.ts";
import type { Cure } from "./cure.ts";
import { givenUpInTime } from "./givenUpInTime.ts";
import type { Operation, OperationId, Step } from "./operation.ts";
import type { Tool } from "./part.ts";
import { ordersResource, type Resource, taskResources, toolResource } from "./resource.ts";
import { wantsOrder } from "./stock.ts";
import { separateSymptoms } from "./symptom.ts";
import { buildTask, type Place, stepsAt } from "./task.ts";

/** What an operation at a place takes. */
export interface Work {
  /** The task first. */
  readonly resources: readonly number[];
  /** The task again, with another way to go on where it fails. */
  readonly taskInstead: readonly number[];
  readonly steps: readonly Step[];
}

/** Finished work takes nothing more. */
const DONE: Work = { resources: [], taskInstead: [], steps: [] };

/** The resources of one bike, each made when first asked for and shared by its courses. Lives for one appraisal. */
export class Ledger {
  readonly bench: Bench;
  readonly resources: Resource[] = [];
  readonly #works: Readonly<Record<Place, Map<Operation, Work>>> = {
    bike: new Map(),
    front: new Map(),
    rear: new Map(),
  };
  readonly #steps = new Map<Step, number>();
  readonly #tools = new Map<Tool, number>();
  #faults: ReturnType<typeof separateSymptoms> | null = null;
  readonly #cures: Readonly<Record<Position, Map<object, readonly Cure[]>>> = {
    bike: new Map(),
    front: new Map(),
    rear: new Map(),
    both: new Map(),
  };
  /** Deliveries are paid once a part is ordered; their count is the course's. */
  #orders: number;
  #ordersPlace: number | null = null;

  constructor(bench: Bench, orders = 0) {
    this.bench = bench;
    this.#orders = orders;
  }

  /** The same resources for a course with another count of deliveries. */
  withOrders(orders: number): this {
    this.#orders = orders;
    if (this.#ordersPlace !== null)
      this.resources[this.#ordersPlace] = ordersResource(this.#orders, this.bench);
    return this;
  }

  /**
   * Resources of one operation at a place: the task, its steps (with all that they imply), tools that are not at hand, the deliveries
   * where it buys a part.
   */
  forOperation(operation: Operation, place: Place): Work {
    const known = this.#works[place].get(operation);
    if (known) return known;
    const work = this.#workOf(operation, place);
    this.#works[place].set(operation, work);
    return work;
  }

  /** The faults to cure, and the symptoms that go with them; see separateSymptoms. */
  faults(): ReturnType<typeof separateSymptoms> {
    this.#faults ??= separateSymptoms(this.bench);
    return this.#faults;
  }

  /**
   * Cures kept by what they are of, the level of a check or one option of its remedy, and by place: the same is asked for by several courses and by
   * several levels.
   */
  cures(
    of: Level | readonly OperationId[],
    position: Position,
    find: () => readonly Cure[],
  ): readonly Cure[] {
    const known = this.#cures[position].get(of);
    if (known) return known;
    const cures = find();
    this.#cures[position].set(of, cures);
    return cures;
  }

  #workOf(operation: Operation, place: Place): Work {
    const { bench } = this;
    if (bench.done.has(operation.id)) return DONE;
    const task = givenUpInTime(buildTask(operation, place, bench), bench);
    const steps = stepsAt(task, bench);
    const ways = taskResources(task, bench).map((one) => this.#add(one));
    const resources = [ways[0]!];
    const taskInstead = ways.slice(1);
    for (const step of steps)
      resources.push(this.#kept(this.#steps, step, (one) => bench.index.stepResources.get(one)!));
    for (const id of operation.tools) {
      if (bench.workshop.tools === null || bench.workshop.tools.has(id)) continue;
      resources.push(this.#kept(this.#tools, bench.index.tools.get(id)!, toolResource));
    }
    const beyondSkill =
      operation.safetyCritical && operation.doneBy === "self" && operation.skill > bench.workshop.skill;
    if (beyondSkill) resources.push(...this.forOperation(bench.index.supervision, "bike").resources);
    if (wantsOrder(task.purchases)) resources.push(this.ordersIndex());
    return { resources, taskInstead, steps };
  }

  /** The deliveries of a course. */
  ordersIndex(): number {
    this.#ordersPlace ??= this.#add(ordersResource(this.#orders, this.bench));
    return this.#ordersPlace;
  }

  #kept<Item>(places: Map<Item, number>, item: Item, make: (item: Item) => Resource): number {
    const known = places.get(item);
    if (known !== undefined) return known;
    const place = this.#add(make(item));
    places.set(item, place);
    return place;
  }

  #add(resource: Resource): number {
    return this.resources.push(resource) - 1;
  }
}
