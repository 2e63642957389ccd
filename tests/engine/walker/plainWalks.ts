import type { Given } from "./given.ts";
import type { Playbook } from "./playbook.ts";
import type { Fitness } from "./stall.ts";
import { Walk } from "./walk.ts";

/** Sold as it stands: it rides unless something that was seen, is missing or nobody looked at forbids it. */
export class AsFoundWalk extends Walk {
  readonly #blocks: readonly (readonly [place: number, ranks: readonly number[]])[];
  readonly #blocked: boolean;

  constructor(given: Given, book: Playbook, seed: number, fitness: Fitness) {
    super(given, book, seed, fitness);
    const { checks } = this.given.tables.inspection;
    this.#blocked =
      this.given.missingParts.length > 0 || this.given.seen.some(({ safety }) => safety === "block");
    this.#blocks = this.levels.ids.flatMap((id, place) => {
      const { levels } = checks.find((check) => check.id === id)!;
      const ranks = levels.flatMap(({ safety }, rank) => (safety === "block" ? [rank] : []));
      return ranks.length > 0 ? [[place, ranks] as const] : [];
    });
  }

  protected override play(): void {
    if (!this.mayBeSold(this.plan)) return;
    this.doAll(this.plan);
    const stopped =
      this.#blocked || this.#blocks.some(([place, ranks]) => ranks.includes(this.levels.ranks[place]!));
    const { asFoundRiding, asFoundNotRiding } = this.given.prices;
    const { logMedian, logSd } = stopped ? asFoundNotRiding : asFoundRiding;
    this.sell(logMedian, logSd, this.given.share.asFound);
  }
}

/** Broken for parts: the pieces of the list, each fit or not, sold or not. */
export class PartsWalk extends Walk {
  protected override play(): void {
    if (!this.mayBeSold(this.plan)) return;
    this.breakUp("as it is");
  }
}
