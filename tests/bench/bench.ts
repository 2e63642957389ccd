import type { Candidate, Effort } from "./measure.ts";

/** A bench of time: ways of doing one piece of work, the yardstick first. */
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

/** Mean score of a way of foretelling over what it foretold; less is better. */
export interface Score {
  name: string;
  mean: number;
}

/** A bench of accuracy: ways of foretelling the same figures, ours first. */
export interface ScoreBench {
  /** What is foretold, and what the score is. */
  title: string;
  tables: readonly {
    /** The data, and how they are parted. */
    name: string;
    /** Null where the data are not at hand. */
    scores: (() => readonly Score[]) | null;
  }[];
}

/** A bench of many cases that differ, with floors of its own. */
export interface FloorBench {
  title: string;
  /** Prints as it goes, and tells whether every floor was kept. */
  run: (print: (line: string) => void) => boolean | Promise<boolean>;
}

/** The default export of every `*.bench.ts` here. */
export type AnyBench = Bench | ScoreBench | FloorBench;
