import type { Chance } from "./chance.ts";
import type { Item } from "./item.ts";
import type { Job, Jobs } from "./job.ts";
import { freed, type Seized } from "./seized.ts";

/** More than there are operations, each at every place and with every list of pieces. */
const MOST_JOBS = 1024;

export type Attempt = "done" | "ended";

/** The work on one bike after another: what was done, and what it has cost. Each job, step, tool and the deliveries are paid once a bike. */
export class Evening {
  money = 0;
  /** At speed 1. */
  minutes = 0;
  /** Whether the last attempt failed. */
  failed = false;
  readonly #chance: Chance;
  readonly #jobs: Jobs;
  readonly #doneJobs: Int32Array;
  readonly #doneSteps: Int32Array;
  readonly #hadTools: Int32Array;
  #ordered = 0;
  #bike = 0;
  #gaveUp = false;

  constructor(jobs: Jobs, chance: Chance) {
    this.#jobs = jobs;
    this.#chance = chance;
    this.#doneJobs = new Int32Array(MOST_JOBS);
    this.#doneSteps = new Int32Array(jobs.steps.length);
    this.#hadTools = new Int32Array(jobs.tools.length);
  }

  next(): void {
    this.#bike++;
    this.money = 0;
    this.minutes = 0;
  }

  isDone(job: Job): boolean {
    return this.#doneJobs[job.index] === this.#bike;
  }

  /** Nothing of it needs doing any more. */
  spare(job: Job): void {
    this.#doneJobs[job.index] = this.#bike;
  }

  do(job: Job): void {
    if (this.isDone(job)) return;
    this.#doneJobs[job.index] = this.#bike;
    this.minutes += job.sureMinutes;
    if (job.seized) this.#free(job.seized);
    else if (job.minutes) this.minutes += this.#chance.ticket(job.minutes);
    this.money += job.sureMoney;
    for (const tickets of job.money) this.money += this.#chance.ticket(tickets);
    this.open(job.steps);
    for (const tool of job.tools) this.#borrow(tool);
    if (job.orders && this.#ordered !== this.#bike) {
      this.#ordered = this.#bike;
      this.money += this.#drawn(this.#jobs.deliveries);
    }
    if (job.watched) this.do(job.watched);
  }

  /** Takes apart, each step once. */
  open(steps: readonly number[]): void {
    for (const step of steps) {
      if (this.#doneSteps[step] === this.#bike) continue;
      this.#doneSteps[step] = this.#bike;
      this.minutes += this.#drawn(this.#jobs.steps[step]!);
    }
  }

  /** Does a job that may fail, with what follows then; what follows may fail in its turn, and after that nothing more is tried. */
  attempt(job: Job, way: number): Attempt {
    this.failed = false;
    if (this.isDone(job)) return "done";
    this.do(job);
    const { failure } = job;
    if (failure === null || failure.endsTitle) return "done";
    if (job.seized ? !this.#gaveUp : this.#chance.uniform() >= failure.chance) return "done";
    this.failed = true;
    this.minutes += failure.extraMinutes;
    if (failure.endsFrame) return "ended";
    for (const next of failure.ways[way] ?? []) {
      if (this.isDone(next)) continue;
      this.do(next);
      if (next.failure === null || this.#chance.uniform() >= next.failure.chance) continue;
      this.minutes += next.failure.extraMinutes;
      if (next.failure.endsFrame) return "ended";
    }
    return "done";
  }

  #free(seized: Seized): void {
    const time = freed(seized, this.#chance);
    this.#gaveUp = time >= seized.limit;
    this.minutes += Math.min(time, seized.limit);
  }

  #borrow(tool: number): void {
    if (this.#hadTools[tool] === this.#bike) return;
    this.#hadTools[tool] = this.#bike;
    this.money += this.#jobs.tools[tool]!;
  }

  #drawn({ sure, tickets }: Item): number {
    return tickets ? sure + this.#chance.ticket(tickets) : sure;
  }
}
