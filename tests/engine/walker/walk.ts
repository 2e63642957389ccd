import type { CourseId } from "../../../worker/engine/service/operation.ts";
import { Bike } from "./bike.ts";
import { Chance } from "./chance.ts";
import { Evening } from "./evening.ts";
import type { Given } from "./given.ts";
import { HiddenLevels } from "./hiddenLevels.ts";
import { type Job, Jobs } from "./job.ts";
import { pastOf } from "./past.ts";
import { piecesOf } from "./pieces.ts";
import type { Ordered, Playbook } from "./playbook.ts";
import { type Fitness, Stall } from "./stall.ts";

/** A job with the list that follows where it fails. */
export interface Planned {
  readonly job: Job;
  readonly way: number;
}

/** How the bike played last ended: the course carried through, another taken up, the frame finished, the number reported. */
export type Fate = "on" | "changed" | "ended" | "reported";

/**
 * Bikes of one course, played one after another at random. Shares the tables with the engine, what it is given (`Given`) and what was decided (`Playbook`): no
 * amount, no chance, no class weight. Prices of parts and minutes are drawn once for each purchase and job, independently, as the plan counts them; what is
 * taken apart, borrowed, ordered or done already is not paid again. An optional fault that nobody saw is left, and the price stays that of the condition
 * shown: the engine's decision, not the market's.
 */
export abstract class Walk {
  margin = 0;
  hours = 0;
  fate: Fate = "on";
  protected readonly given: Given;
  protected readonly book: Playbook;
  protected readonly bike: Bike;
  protected readonly chance: Chance;
  protected readonly levels: HiddenLevels;
  protected readonly jobs: Jobs;
  protected readonly work: Evening;
  protected readonly plan: readonly Planned[];
  readonly #others: ReadonlyMap<CourseId, readonly Planned[]>;
  readonly #breaking: { readonly whole: readonly Planned[]; readonly frameless: readonly Planned[] };
  readonly #stalls: { readonly whole: Stall; readonly frameless: Stall };
  readonly #frameLosses: readonly (readonly [place: number, ranks: readonly number[]])[];
  readonly #pace: { readonly logMean: number; readonly logSd: number };
  readonly #ahead: { readonly money: number; readonly minutes: number };

  constructor(given: Given, book: Playbook, seed: number, fitness: Fitness) {
    const past = pastOf(given);
    this.given = given;
    this.book = book;
    this.bike = new Bike(given, past);
    this.chance = new Chance(seed);
    this.levels = new HiddenLevels(past, () => true);
    this.jobs = new Jobs(given, this.bike, book.course, book.limits);
    const bare =
      given.attributes.completeness === "frame-and-fork" || given.attributes.completeness === "frame-only";
    const pieces = bare ? [] : piecesOf(given, past);
    const listed = (ids: readonly string[]) => pieces.filter(({ id }) => ids.includes(id));
    const posting = (ids: readonly string[]) => listed(ids).reduce((sum, one) => sum + one.postingMinutes, 0);
    const stall = (ids: readonly string[]) => new Stall(listed(ids), given, this.levels, fitness);
    this.plan = book.plan.map((one) => this.planned(one, posting(book.listed)));
    this.#others = new Map([...book.others].map(([id, list]) => [id, list.map((one) => this.planned(one))]));
    const breaking = (ids: readonly string[]) =>
      book.others.get("break-for-parts")!.map((one) => this.planned(one, posting(ids)));
    this.#breaking = { whole: breaking(book.listed), frameless: breaking(book.listedWithoutFrame) };
    this.#stalls = { whole: stall(book.listed), frameless: stall(book.listedWithoutFrame) };
    const blocking = given.tables.inspection.checks.filter(({ group }) => group === "frame-fork");
    this.#frameLosses = blocking.flatMap(({ id, levels }) => {
      const place = this.levels.placeOf(id);
      const ranks = levels.flatMap(({ safety }, rank) => (safety === "block" ? [rank] : []));
      return place < 0 || ranks.length === 0 ? [] : [[place, ranks] as const];
    });
    const { speedFactor, speedSpread } = given.terms;
    this.#pace = { logMean: Math.log(speedFactor) - speedSpread ** 2 / 2, logSd: speedSpread };
    const { paid, price, travelCost, travelMinutes } = given.purchase;
    this.#ahead = paid ? { money: 0, minutes: 0 } : { money: price + travelCost, minutes: travelMinutes };
    this.work = new Evening(this.jobs, this.chance);
  }

  /** Plays the bike once it is bought and its past is drawn. */
  protected abstract play(): void;

  next(): void {
    this.work.next();
    this.levels.draw(this.chance);
    this.margin = -this.#ahead.money;
    this.fate = "on";
    this.play();
    const pace = Math.exp(this.#pace.logMean + this.#pace.logSd * this.chance.normal());
    this.margin -= this.work.money;
    this.hours = (pace * this.work.minutes + this.#ahead.minutes) / 60;
  }

  protected planned({ operation, place, way }: Ordered, posting = 0): Planned {
    const { sellsParts } = this.jobs.operation(operation);
    return { job: this.jobs.at(operation, place, sellsParts ? posting : 0), way };
  }

  /** Asks for the papers first. @returns whether the bike may be sold */
  protected mayBeSold(plan: readonly Planned[]): boolean {
    for (const { job } of plan) {
      if (!job.failure?.endsTitle) continue;
      this.work.do(job);
      if (this.chance.uniform() >= job.failure.chance) continue;
      this.fate = "reported";
      return false;
    }
    return true;
  }

  /** Sells one price's worth, fees and packing paid. */
  protected sell(logMedian: number, logSd: number, share: number): void {
    this.receive(share * Math.exp(logMedian + logSd * this.chance.normal()));
  }

  protected receive(takings: number): void {
    this.margin += takings - this.given.fee.fixed - this.given.packing;
  }

  /** Takes the bike apart and sells the pieces. */
  protected breakUp(frame: "as it is" | "lost"): void {
    const lost = frame === "lost";
    this.doAll(lost ? this.#breaking.frameless : this.#breaking.whole);
    this.#offer(lost ? this.#stalls.frameless : this.#stalls.whole, lost || this.#frameIsLost());
  }

  protected doAll(plan: readonly Planned[]): void {
    for (const { job } of plan) this.work.do(job);
  }

  /** Another course is taken up; what of it is done already is not done again. */
  protected turnTo(course: CourseId, frame: "as it is" | "lost"): void {
    if (course === "break-for-parts") {
      this.breakUp(frame);
      return;
    }
    this.doAll(this.#others.get(course)!);
    if (course !== "sell-as-found") return;
    const { logMedian, logSd } = this.given.prices.asFoundNotRiding;
    this.sell(logMedian, logSd, this.given.share.asFound);
  }

  #offer(stall: Stall, frameLost: boolean): void {
    if (stall.isEmpty) return;
    this.receive(stall.takings(this.chance, this.chance.normal(), frameLost, this.levels.ranks));
  }

  #frameIsLost(): boolean {
    return this.#frameLosses.some(([place, ranks]) => ranks.includes(this.levels.ranks[place]!));
  }
}
