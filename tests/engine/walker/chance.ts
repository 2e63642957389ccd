/**
 * Random numbers of the walker's own: sfc32 (Chris Doty-Humphrey's small fast counter of 128 bits, public domain), so that tens of millions of bikes do not
 * run through one period of 32 bits.
 */
export class Chance {
  readonly #state: Uint32Array;
  #spare = Number.NaN;

  constructor(seed: number) {
    this.#state = Uint32Array.of(seed, 0x9e3779b9, 0x243f6a88, 1);
    for (let turn = 0; turn < 20; turn++) this.bits();
  }

  /** 32 random bits. */
  bits(): number {
    const state = this.#state;
    const b = state[1]!;
    const c = state[2]!;
    const sum = (state[0]! + b + state[3]!) >>> 0;
    state[3]!++;
    state[0] = b ^ (b >>> 9);
    state[1] = c + (c << 3);
    state[2] = ((c << 21) | (c >>> 11)) + sum;
    return sum;
  }

  /** Strictly between 0 and 1. */
  uniform(): number {
    return (this.bits() + 0.5) / 4294967296;
  }

  /** Standard normal, by pairs (Box & Muller 1958). */
  normal(): number {
    const spare = this.#spare;
    if (!Number.isNaN(spare)) {
      this.#spare = Number.NaN;
      return spare;
    }
    const radius = Math.sqrt(-2 * Math.log(this.uniform()));
    const angle = 2 * Math.PI * this.uniform();
    this.#spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  }

  /** One of the tickets, each as likely as the next. */
  ticket(tickets: Float64Array): number {
    return tickets[this.bits() >>> (32 - TICKET_BITS)]!;
  }
}

const TICKET_BITS = 11;
export const TICKET_COUNT = 2 ** TICKET_BITS;
