type Of = 10 | 20 | 100;

/** The same inside a sentence: "in 3 of 10", "in fewer than 1 of 20". */
export function outOf(probability: number, of: Of): string {
  return `in ${chance(probability, of).replace(" in ", " of ")}`;
}

/** A probability as n in `of`, never rounded to a certainty that is not there: "3 in 10", "fewer than 1 in 20". */
export function chance(probability: number, of: Of): string {
  const n = Math.round(probability * of);
  if (n === 0 && probability > 0) return `fewer than 1 in ${of}`;
  if (n === of && probability < 1) return `more than ${of - 1} in ${of}`;
  return `${n} in ${of}`;
}

/** Chances nearer than this to none or to all are told of 20, and those nearer still of 100. */
const RARE = 0.075;
const VERY_RARE = 0.025;

/** As coarsely as a chance can be told without rounding it away or doubling it: of 10, else of 20, else of 100. */
export function fineness(probability: number): Of {
  const edge = Math.min(probability, 1 - probability);
  if (edge === 0 || edge >= RARE) return 10;
  return edge >= VERY_RARE ? 20 : 100;
}

/** "3 in 10", "1 in 20", "2 in 100". */
export function fineChance(probability: number): string {
  return chance(probability, fineness(probability));
}
