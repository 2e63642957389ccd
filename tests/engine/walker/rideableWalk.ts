import type { LogNormal } from "../../../worker/engine/statistics/logNormal.ts";
import type { Given } from "./given.ts";
import { NO_PATH, type Ordered, type Playbook, pathCode } from "./playbook.ts";
import { type Question, questionOf, type Ready } from "./question.ts";
import type { Fitness } from "./stall.ts";
import { type Fate, type Planned, Walk } from "./walk.ts";

/** Something that is decided on: a job of the plan, with the number of its failure, or a question. */
interface Showing {
  readonly job: Planned | null;
  /** Done already when the job is opened. */
  readonly opens: boolean;
  readonly question: Question | null;
  readonly outcome: number;
}

/**
 * Restoring or making safe, played as the work goes: papers, what opens the job, what is decided on as it shows, what else turns up, the plan, the sale. A
 * finished frame or a change of course ends it where it stands.
 */
export class RideableWalk extends Walk {
  readonly #questions: readonly Question[];
  readonly #opening: readonly Planned[];
  readonly #later: readonly Planned[];
  readonly #decisions: readonly Showing[];
  /** By question. */
  readonly #undecided: readonly boolean[];
  /** What the bike played asks for, by question. */
  readonly #found: (Ready | null)[];
  readonly #condition: number;
  /** By thousandths of condition told. */
  readonly #prices: LogNormal[] = [];
  readonly #failed = new Set<number>();

  constructor(given: Given, playbook: Playbook, seed: number, fitness: Fitness) {
    super(given, playbook, seed, fitness);
    const { book, bike } = this;
    const opens = ({ job: { operation } }: Planned) =>
      operation.failure?.redecide === true ||
      (operation.alwaysIn.includes("sell-as-found") && !operation.selling && !operation.effect.polishes);
    this.#opening = this.plan.filter(opens);
    this.#later = this.plan.filter((one) => !opens(one));
    const left = bike.faults.filter(({ check, position }) => !book.cured.has(`${check.id} ${position}`));
    this.#condition =
      1 -
      (book.course === "restore" ? 0 : given.prices.notPolished) -
      left.reduce((sum, { penalty }) => sum + penalty, 0);
    this.#questions = [...book.responses].map(([id, byRank]) => {
      const check = given.tables.inspection.checks.find((one) => one.id === id)!;
      const planned = (one: Ordered) => this.planned(one);
      return questionOf(check, this.levels.placeOf(id), byRank, book, this.plan, planned);
    });
    this.#decisions = book.decisions.map(({ of, job: place, outcome }) => {
      const job =
        place === null
          ? null
          : this.plan.find(({ job: { operation, place: at } }) => operation.id === of && at === place)!;
      const question =
        place === null ? this.#questions.find((one) => this.levels.ids[one.place] === of)! : null;
      return { job, question, opens: job !== null && opens(job), outcome: outcome.get(0) ?? -1 };
    });
    this.#undecided = this.#questions.map((one) => !this.#decisions.some(({ question }) => question === one));
    this.#found = new Array<Ready | null>(this.#questions.length).fill(null);
  }

  protected override play(): void {
    if (!this.mayBeSold(this.plan)) return;
    this.#look();
    this.fate = this.#work();
    if (this.fate === "ended") this.turnTo(this.book.salvage, "lost");
    else if (this.fate === "changed") this.turnTo(this.book.change, "as it is");
    else this.#sellFinished();
  }

  /** What the levels drawn will ask for; what they spare falls away. */
  #look(): void {
    for (let at = 0; at < this.#questions.length; at++) {
      const { place, byRank } = this.#questions[at]!;
      const ready = byRank[this.levels.ranks[place]!]!;
      this.#found[at] = ready;
      if (ready !== null) for (const { job } of ready.spared) this.work.spare(job);
    }
  }

  /** The work as far as it goes. */
  #work(): Fate {
    const turn = this.#open() ?? this.#decide() ?? this.#turnUp();
    if (turn !== null) return turn;
    for (const { job, way } of this.#later) if (this.work.attempt(job, way) === "ended") return "ended";
    return "on";
  }

  #sellFinished(): void {
    let told = 0;
    for (const ready of this.#found) if (ready !== null) told += ready.penalty;
    const { logMedian, logSd } = this.#price(told);
    this.sell(logMedian, logSd, this.given.share.rideable);
  }

  /** Work that opens the job, in working order. @returns null where the work goes on */
  #open(): Fate | null {
    this.#failed.clear();
    for (const { job, way } of this.#opening) {
      if (this.work.attempt(job, way) === "ended") return "ended";
      if (this.work.failed) this.#failed.add(job.index);
    }
    return null;
  }

  /** Decides as things show, on what showed so far. */
  #decide(): Fate | null {
    let path = NO_PATH;
    for (const { job, opens, question, outcome } of this.#decisions) {
      let came = -1;
      if (job) {
        if (!opens) {
          if (this.work.attempt(job.job, job.way) === "ended") return "ended";
          if (this.work.failed) this.#failed.add(job.job.index);
        }
        if (this.#failed.has(job.job.index)) came = outcome;
      } else {
        const { place, byRank, opening, outcomes } = question!;
        const rank = this.levels.ranks[place]!;
        this.work.open(opening);
        if (byRank[rank]?.kind === "condemned") return "ended";
        came = outcomes!.get(rank) ?? -1;
      }
      path = pathCode(path, came);
      if (this.book.changedAfter.has(path)) return "changed";
    }
    return null;
  }

  /** All else that nobody looked at: what condemns the frame, then the cures, those that may end it first. */
  #turnUp(): Fate | null {
    for (let at = 0; at < this.#questions.length; at++)
      if (this.#found[at]?.kind === "spared") this.work.open(this.#questions[at]!.opening);
    for (let at = 0; at < this.#questions.length; at++) {
      if (this.#found[at]?.kind !== "condemned" || !this.#undecided[at]) continue;
      this.work.open(this.#questions[at]!.opening);
      return "ended";
    }
    for (const ready of this.#found)
      if (ready !== null)
        for (const { job, way } of ready.risky) if (this.work.attempt(job, way) === "ended") return "ended";
    for (const ready of this.#found)
      if (ready !== null)
        for (const { job, way } of ready.cures) if (this.work.attempt(job, way) === "ended") return "ended";
    return null;
  }

  /** The going rate with faults of this penalty told to the buyer. */
  #price(told: number) {
    const thousandths = Math.round(told * 1000);
    const known = this.#prices[thousandths];
    if (known) return known;
    const { polished, repainted } = this.book;
    const price = this.given.prices.rideable(this.#condition - told, { polished, repainted });
    this.#prices[thousandths] = price;
    return price;
  }
}
