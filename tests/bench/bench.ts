import type { Candidate, Effort } from "./measure.ts";

/** A bench: ways of doing one piece of work, the yardstick first. The default export of every `*.bench.ts` here. */
export interface Bench {
  /** The piece of work, with its size. */
  title: string;
  candidates: readonly Candidate[];
  /** How long to measure, where not as usual. */
  effort?: Effort;
  /** Candidates that may take at most so many times as long as the first, by name. */
  mostTimesTheFirst?: Readonly<Record<string, number>>;
  /** Ends what the bench started. */
  close?: () => Promise<void>;
}
