import type { LogNormal } from "../../../worker/engine/statistics/logNormal.ts";
import type { Chance } from "./chance.ts";
import type { Given } from "./given.ts";
import type { HiddenLevels } from "./hiddenLevels.ts";
import type { Piece } from "./pieces.ts";

interface Offer {
  readonly net: number;
  readonly sells: number;
  readonly fit: number;
  readonly isFrame: boolean;
  /** Place of a check among the hidden ones, its ranks that take from the piece, and how much. */
  readonly threats: readonly {
    readonly place: number;
    readonly ranks: readonly number[];
    readonly share: number;
  }[];
}

/** Whether a piece is fit: each on its own by its chance, or by the levels that were drawn. */
export type Fitness = "by chance" | "by levels";

/** Pieces on offer: each is fit or not, sells or not, and all move with the one price of the day. */
export class Stall {
  readonly #offers: readonly Offer[];
  readonly #price: LogNormal;
  readonly #fitness: Fitness;

  constructor(pieces: readonly Piece[], given: Given, levels: HiddenLevels, fitness: Fitness) {
    const { checks } = given.tables.inspection;
    this.#price = given.prices.parts;
    this.#fitness = fitness;
    this.#offers = pieces.map(({ net, sells, fit, isFrame, threats }) => ({
      net,
      sells,
      fit,
      isFrame,
      threats: threats.flatMap(({ match, share }) => {
        const place = levels.placeOf(match.check);
        const { levels: rows } = checks.find(({ id }) => id === match.check)!;
        const ranks = match.levels.map((level) => rows.findIndex(({ id }) => id === level));
        return place < 0 ? [] : [{ place, ranks, share }];
      }),
    }));
  }

  get isEmpty(): boolean {
    return this.#offers.length === 0;
  }

  /** What the pieces bring that are fit and sell. */
  takings(chance: Chance, residual: number, frameLost: boolean, ranks: Int8Array): number {
    let sum = 0;
    for (const offer of this.#offers) {
      if (offer.isFrame && frameLost) continue;
      if (chance.uniform() >= offer.sells) continue;
      if (this.#fitness === "by levels") sum += offer.net * leftOf(offer, ranks);
      else if (chance.uniform() < offer.fit) sum += offer.net;
    }
    const { logSd } = this.#price;
    return sum * Math.exp(logSd * residual - (logSd * logSd) / 2);
  }
}

function leftOf({ threats }: Offer, ranks: Int8Array): number {
  let left = 1;
  for (const threat of threats) if (threat.ranks.includes(ranks[threat.place]!)) left -= threat.share;
  return Math.max(0, left);
}
