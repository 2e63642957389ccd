import type { Chance } from "./chance.ts";
import { CLASSES, type Hidden, type Past } from "./past.ts";

/** Draws a bike's past and, given it, the levels of the checks that nobody looked at; a check that is not asked for is not drawn. */
export class HiddenLevels {
  readonly ids: readonly string[];
  /** Levels of the last draw, in the order of the checks. */
  readonly ranks: Int8Array;
  readonly #classes: Float64Array;
  /** Chance of a worse level than each, by check, class and level. */
  readonly #worse: readonly Float64Array[];
  readonly #levels: readonly number[];

  /** @param asked the checks whose level matters */
  constructor({ classes, hidden }: Past, asked: (check: Hidden["check"]) => boolean) {
    const drawn = hidden.filter(({ check }) => asked(check));
    this.ids = drawn.map(({ check }) => check.id);
    this.ranks = new Int8Array(drawn.length);
    this.#levels = drawn.map(({ check }) => check.levels.length);
    this.#worse = drawn.map(({ chances }) =>
      Float64Array.from(chances.flatMap((levels) => levels.map((_, rank) => worseThan(levels, rank)))),
    );
    this.#classes = new Float64Array(CLASSES);
    let sum = 0;
    for (let z = 0; z < CLASSES; z++) this.#classes[z] = sum += classes[z]!;
  }

  placeOf(check: string): number {
    return this.ids.indexOf(check);
  }

  draw(chance: Chance): void {
    const u = chance.uniform() * this.#classes[CLASSES - 1]!;
    let z = 0;
    while (this.#classes[z]! <= u) z++;
    for (let check = 0; check < this.ranks.length; check++) {
      const levels = this.#levels[check]!;
      const worse = this.#worse[check]!;
      const v = chance.uniform();
      let rank = 0;
      while (v < worse[z * levels + rank]!) rank++;
      this.ranks[check] = rank;
    }
  }
}

function worseThan(levels: readonly number[], rank: number): number {
  return levels.slice(rank + 1).reduce((sum, one) => sum + one, 0);
}
