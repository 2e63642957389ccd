/**
 * The hidden history by enumeration, written apart from the engine: every combination of factors and levels of all checks is listed with its
 * chance, and what was seen is conditioned on by adding up.
 */

export interface SmallCheck {
  readonly id: string;
  readonly ordered: boolean;
  readonly prior: readonly number[];
  /** Shift of the log odds by each factor, scaled. */
  readonly shifts: readonly number[];
}

interface Outcome {
  readonly chance: number;
  readonly factors: readonly boolean[];
  readonly levels: readonly number[];
}

export interface Conditioned {
  /** Chance of each factor. */
  readonly factors: readonly number[];
  /** Chance of each combination of factors, factor f in bit f. */
  readonly classes: readonly number[];
  /** Chances of the levels of each check. */
  readonly levels: readonly (readonly number[])[];
}

/** @param seen rank of each check that was looked at */
export function conditioned(
  chances: readonly number[],
  checks: readonly SmallCheck[],
  seen: ReadonlyMap<string, number>,
): Conditioned {
  const factors = chances.map(() => 0);
  const classes = combinations(chances.length).map(() => 0);
  const levels = checks.map(({ prior }) => prior.map(() => 0));
  let total = 0;
  for (const outcome of outcomes(chances, checks)) {
    if (checks.some(({ id }, at) => seen.has(id) && seen.get(id) !== outcome.levels[at])) continue;
    total += outcome.chance;
    classes[outcome.factors.reduce((z, holds, f) => (holds ? z + 2 ** f : z), 0)]! += outcome.chance;
    for (const [f, holds] of outcome.factors.entries()) if (holds) factors[f]! += outcome.chance;
    for (const [at, rank] of outcome.levels.entries()) levels[at]![rank]! += outcome.chance;
  }
  const share = (sum: number) => sum / total;
  return {
    factors: factors.map(share),
    classes: classes.map(share),
    levels: levels.map((row) => row.map(share)),
  };
}

function outcomes(chances: readonly number[], checks: readonly SmallCheck[]): Outcome[] {
  const cuts = checks.map((check) => cutsOf(check, chances));
  return combinations(chances.length).flatMap((factors) => {
    const chance = chances.reduce((product, one, f) => product * (factors[f] ? one : 1 - one), 1);
    const start: Outcome[] = [{ chance, factors, levels: [] }];
    return checks.reduce((list, check, at) => {
      const given = levelsGiven(check, cuts[at]!, factors);
      return list.flatMap((one) =>
        given.map((p, rank) => ({ ...one, chance: one.chance * p, levels: [...one.levels, rank] })),
      );
    }, start);
  });
}

/** Factor f is bit f of the place in the list. */
function combinations(count: number): boolean[][] {
  return Array.from({ length: 2 ** count }, (_, z) =>
    Array.from({ length: count }, (_, f) => Math.floor(z / 2 ** f) % 2 === 1),
  );
}

/** The cuts of levels 1 and worse; among kinds the first one parts the best from all others. */
function cutsOf({ prior, shifts }: SmallCheck, chances: readonly number[]): number[] {
  return prior.slice(1).map((_, at) =>
    cut(
      prior.slice(at + 1).reduce((a, b) => a + b, 0),
      shifts,
      chances,
    ),
  );
}

function levelsGiven(
  { ordered, prior, shifts }: SmallCheck,
  cuts: readonly number[],
  factors: readonly boolean[],
): number[] {
  const beyond = [1, ...cuts.map((one) => logistic(one + shiftOf(factors, shifts)))];
  if (ordered) return beyond.map((tail, rank) => tail - (beyond[rank + 1] ?? 0));
  const others = 1 - prior[0]!;
  return prior.map((chance, rank) => (rank === 0 ? 1 - beyond[1]! : (beyond[1]! * chance) / others));
}

/** The cut whose average over all combinations of factors is the tail, by halving. */
function cut(tail: number, shifts: readonly number[], chances: readonly number[]): number {
  let low = -100;
  let high = 100;
  for (let step = 0; step < 120; step++) {
    const middle = (low + high) / 2;
    const average = combinations(chances.length).reduce((sum, factors) => {
      const chance = chances.reduce((product, one, f) => product * (factors[f] ? one : 1 - one), 1);
      return sum + chance * logistic(middle + shiftOf(factors, shifts));
    }, 0);
    if (average < tail) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function shiftOf(factors: readonly boolean[], shifts: readonly number[]): number {
  return shifts.reduce((sum, shift, f) => (factors[f] ? sum + shift : sum), 0);
}

function logistic(x: number): number {
  return 1 / (1 + Math.exp(-x));
}
