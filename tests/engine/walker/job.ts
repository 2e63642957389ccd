import type { CourseId, Operation, PartUse, Variant } from "../../../worker/engine/service/operation.ts";
import type { Place } from "../../../worker/engine/service/task.ts";
import type { Bike } from "./bike.ts";
import { fits, type Given } from "./given.ts";
import { deliveriesOf, type Item, itemOf, minutesOf, partOf, priceOf, scaled } from "./item.ts";
import { type Seized, seizedFrom } from "./seized.ts";

/** One operation at one place, ready to be done. Amounts that vary are tickets. */
export interface Job {
  readonly index: number;
  readonly operation: Operation;
  readonly place: Place;
  readonly sureMinutes: number;
  readonly minutes: Float64Array | null;
  /** In place of the minutes where its end is open; it fails where it is given up. */
  readonly seized: Seized | null;
  readonly sureMoney: number;
  readonly money: readonly Float64Array[];
  readonly steps: readonly number[];
  readonly tools: readonly number[];
  /** Buys a part, so that deliveries are paid. */
  readonly orders: boolean;
  /** The second pair of eyes. */
  readonly watched: Job | null;
  readonly failure: JobFailure | null;
}

export interface JobFailure {
  readonly chance: number;
  readonly extraMinutes: number;
  /** Lists of which one is then done; none where nothing can. */
  readonly ways: readonly (readonly Job[])[];
  /** Nothing can follow: the frame is finished. */
  readonly endsFrame: boolean;
  /** Nothing may be sold. */
  readonly endsTitle: boolean;
}

const SECOND_EYES = "paid-safety-check";
const MISSING_PARTS = "complete-fittings";

/** The jobs of one bike, made from the tables when first asked for, with the steps and tools that they share. */
export class Jobs {
  readonly all: Job[] = [];
  readonly steps: readonly Item[];
  readonly tools: readonly number[];
  readonly deliveries: Item;
  readonly #given: Given;
  readonly #bike: Bike;
  readonly #limits: ReadonlyMap<string, number>;
  readonly #made = new Map<string, Job>();

  /** @param limits minutes after which an operation with an open end is given up */
  constructor(given: Given, bike: Bike, course: CourseId, limits: ReadonlyMap<string, number>) {
    this.#limits = limits;
    this.#given = given;
    this.#bike = bike;
    this.steps = given.tables.service.steps.map(({ minutes }) => itemOf(minutes));
    this.tools = given.tables.service.tools.map(({ buy, borrow }) => Math.min(buy, borrow));
    this.deliveries = deliveriesOf(given, course);
  }

  operation(id: string): Operation {
    return this.#given.tables.service.operations.find((one) => one.id === id)!;
  }

  applies({ onlyIf, notOnMaterials }: Operation): boolean {
    const { attributes } = this.#given;
    return fits(onlyIf, attributes) && !notOnMaterials.includes(attributes.frameMaterial);
  }

  /** @param posting minutes to list and post the pieces, where the job sells parts */
  at(id: string, place: Place, posting = 0): Job {
    const key = `${id} ${place} ${posting}`;
    const known = this.#made.get(key);
    if (known) return known;
    const made = this.#make(this.operation(id), place, posting);
    this.#made.set(key, made);
    return made;
  }

  #make(operation: Operation, place: Place, posting: number): Job {
    const { terms, missingParts, tables } = this.#given;
    const variant = this.#variantOf(operation);
    const share = operation.per === "pair" ? 0.5 : 1;
    const bought = (variant?.uses ?? operation.uses).flatMap((use) => this.#bought(use, place, share) ?? []);
    if (operation.id === MISSING_PARTS) bought.push(...missingParts.map((part) => ({ part, quantity: 1 })));
    const prices = bought.map(({ part, quantity }) => scaled(priceOf(part, this.#given), quantity));
    const failure = this.#failureOf(operation, variant, place, share);
    const limit = this.#limits.get(operation.id);
    const seized =
      operation.openEnded && failure && limit !== undefined
        ? seizedFrom(variant?.minutes ?? operation.minutes, failure.chance, limit)
        : null;
    const own = minutesOf(operation, variant, share, this.#given);
    const hunting =
      operation.id === MISSING_PARTS ? tables.defaults.huntMinutesPerMissingPart * missingParts.length : 0;
    const beyondSkill =
      operation.safetyCritical && operation.doneBy === "self" && operation.skill > terms.skill;
    const job = {
      operation,
      place,
      sureMinutes: own.sure + hunting + posting,
      minutes: own.tickets,
      seized,
      sureMoney: prices.reduce((sum, { sure }) => sum + sure, 0),
      money: prices.flatMap(({ tickets }) => tickets ?? []),
      steps: this.#stepsOf(variant?.steps ?? operation.steps, place),
      tools: operation.tools
        .filter((id) => terms.tools !== null && !terms.tools.has(id))
        .map((id) => tables.service.tools.findIndex((tool) => tool.id === id)),
      orders: bought.some(({ part }) => partOf(part, this.#given).kind === "part"),
      watched: beyondSkill ? this.at(SECOND_EYES, "bike") : null,
      failure,
    };
    // What follows a failure was made meanwhile and has its place already.
    const placed = { ...job, index: this.all.length };
    this.all.push(placed);
    return placed;
  }

  /** The smaller job where all faults that call for the operation allow it. */
  #variantOf(operation: Operation): Variant | null {
    const { attributes, tables } = this.#given;
    const variant = operation.variants.find(
      ({ at, when }) => fits(when, attributes) && this.#bike.hasFault(at),
    );
    if (!variant) return null;
    const calling = this.#bike.faults.filter(({ check, level }) =>
      tables.service.remedies.some(
        (row) => row.check === check.id && row.level === level && row.options.flat().includes(operation.id),
      ),
    );
    const smaller = calling.every(
      ({ check, level }) => check.id === variant.at.check && variant.at.levels.includes(level),
    );
    return smaller ? variant : null;
  }

  #bought(use: PartUse, place: Place, share: number): { part: string; quantity: number } | null {
    const { attributes } = this.#given;
    const any = (matches: PartUse["onlyAt"]) =>
      matches.length === 0 || matches.some((match) => this.#bike.stands(match));
    if (!fits(use.when, attributes) || !any(use.onlyAt)) return null;
    const instead = use.instead.find(
      ({ when, at, position }) =>
        fits(when, attributes) && any(at) && (position === null || position === place),
    );
    const quantity = (instead?.quantity ?? use.quantity) * share;
    return quantity > 0 ? { part: instead?.part ?? use.part, quantity } : null;
  }

  /** Steps with what they imply, of the job's own wheel, that this bike has. */
  #stepsOf(ids: readonly string[], place: Place): number[] {
    const { steps } = this.#given.tables.service;
    const wanted = new Set(ids);
    for (const id of wanted)
      for (const implied of steps.find((one) => one.id === id)!.implies) wanted.add(implied);
    return [...wanted]
      .map((id) => steps.findIndex((one) => one.id === id))
      .filter((index) => {
        const { position, onlyIf } = steps[index]!;
        return (
          (place === "bike" || position === null || position === place) &&
          fits(onlyIf, this.#given.attributes)
        );
      });
  }

  #failureOf(operation: Operation, variant: Variant | null, place: Place, share: number): JobFailure | null {
    const { failure } = operation;
    // An adjustment that opens nothing does not carry the full job's risk.
    if (failure === null || variant?.steps?.length === 0) return null;
    const { attributes } = this.#given;
    const row = failure.chances.find(
      ({ when, at }) =>
        fits(when, attributes) && (at.length === 0 || at.some((match) => this.#bike.stands(match))),
    );
    if (!row || row.probability === 0) return null;
    const ways = failure.thenOneOf
      .map((list) => list.map((id) => this.operation(id)))
      .filter((list) => list.every((one) => this.applies(one)))
      .map((list) =>
        list.map((one) =>
          this.at(one.id, one.per === "bike" ? "bike" : place === "front" ? "front" : "rear"),
        ),
      );
    return {
      chance: row.probability * share,
      extraMinutes: failure.extraMinutes,
      ways,
      endsFrame: failure.ends === "frame" && failure.thenOneOf.length === 0,
      endsTitle: failure.ends === "title",
    };
  }
}
