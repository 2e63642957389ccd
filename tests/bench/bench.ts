import type { Candidate } from "./measure.ts";

/** A bench: ways of doing one piece of work, the yardstick first. The default export of every `*.bench.ts` here. */
export interface Bench {
  /** The piece of work, with its size. */
  title: string;
  candidates: readonly Candidate[];
}
