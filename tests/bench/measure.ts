/** One way of doing a piece of work, to be timed beside others. */
export interface Candidate {
  name: string;
  /** Does the work once; what it returns is awaited where it is a promise. */
  run: () => unknown;
}

/** The time one run of a candidate took, in microseconds, over the rounds. */
export interface Timing {
  name: string;
  median: number;
  fastest: number;
  slowest: number;
}

/** How long to measure. */
export interface Effort {
  /** Rounds counted, after one that is not. */
  rounds: number;
  /** The least time a candidate runs in each round, in milliseconds; 0 for one run, so that the median is of single runs. */
  roundMilliseconds: number;
}

const USUAL_EFFORT: Effort = { rounds: 11, roundMilliseconds: 20 };

/**
 * Times candidates side by side: in every round each runs in turn, so that what else the machine does touches all
 * alike, and the median over the rounds is told. Ratios between candidates of one call bear comparing; times between
 * machines do not.
 * @param candidates the ways of doing the work, the yardstick first
 */
export async function measure(
  candidates: readonly Candidate[],
  effort: Effort = USUAL_EFFORT,
): Promise<Timing[]> {
  const times = candidates.map((): number[] => []);
  for (let round = 0; round <= effort.rounds; round += 1) {
    for (const [at, candidate] of candidates.entries()) {
      const microseconds = await timeOnce(candidate, effort.roundMilliseconds);
      if (round > 0) times[at]?.push(microseconds);
    }
  }
  return candidates.map(({ name }, at) => summary(name, times[at] ?? []));
}

/** The middle value; the mean of the two in the middle where their number is even. NaN for none. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  const upper = sorted[Math.floor(half)] ?? Number.NaN;
  return Number.isInteger(half) ? (upper + (sorted[half - 1] ?? Number.NaN)) / 2 : upper;
}

/** Microseconds a run takes, from as many runs as fill the time, one at least. */
async function timeOnce({ run }: Candidate, milliseconds: number): Promise<number> {
  const start = performance.now();
  let runs = 0;
  let now = start;
  do {
    const result = run();
    if (result instanceof Promise) await result;
    runs += 1;
    now = performance.now();
  } while (now - start < milliseconds);
  return ((now - start) / runs) * 1000;
}

function summary(name: string, times: readonly number[]): Timing {
  return { name, median: median(times), fastest: Math.min(...times), slowest: Math.max(...times) };
}
