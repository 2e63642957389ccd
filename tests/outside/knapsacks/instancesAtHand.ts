import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type {
  GroupOption,
  MultipleChoiceProblem,
} from "../../../worker/engine/optimization/multipleChoice.ts";

const FOLDER = process.env.SPOKEWORTH_BENCHMARKS ?? "";

/** A published instance with what it is known to come to. */
export interface PublishedInstance {
  readonly id: string;
  readonly problem: MultipleChoiceProblem;
  readonly optimum: number;
  /** Of the linear relaxation; null where none was told. */
  readonly lpBound: number | null;
}

interface Listed {
  readonly id: string;
  readonly optimum: number;
  readonly lpBound: number | null;
  readonly capacity: readonly number[];
}

/** Items that are taken or left: each a group of two options. Null where the file is not at hand. */
export function multidimensional(): readonly PublishedInstance[] | null {
  return listed<{ profit: readonly number[]; weights: readonly (readonly number[])[] }>(
    "knapsack_multidimensional.json",
    ({ profit, weights }) =>
      profit.map((value, item) => [
        { value: 0, use: weights.map(() => 0) },
        { value, use: weights.map((row) => row[item]!) },
      ]),
  );
}

/** One item of each group. Null where the file is not at hand. */
export function multipleChoice(): readonly PublishedInstance[] | null {
  return listed<{ groups: readonly (readonly GroupOption[])[] }>(
    "knapsack_multiple_choice.json",
    ({ groups }) => groups,
  );
}

function listed<Content>(
  file: string,
  groupsOf: (content: Content) => readonly (readonly GroupOption[])[],
): readonly PublishedInstance[] | null {
  const path = join(FOLDER, file);
  if (FOLDER === "" || !existsSync(path)) return null;
  const { instances }: { instances: readonly (Listed & Content)[] } = JSON.parse(readFileSync(path, "utf8"));
  return instances.map((instance) => ({
    id: instance.id,
    problem: { groups: groupsOf(instance), budgets: instance.capacity },
    optimum: instance.optimum,
    lpBound: instance.lpBound,
  }));
}
