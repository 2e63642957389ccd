import loadHighs from "highs";
import type { MultipleChoiceProblem } from "../../../worker/engine/optimization/multipleChoice.ts";

const highs = await loadHighs();

/** What another solver says: its best total, and whether it proved it within its time. */
export interface OtherAnswer {
  readonly value: number;
  readonly proven: boolean;
}

/** The problem as a mixed-integer program, one 0/1 variable an option, in CPLEX LP format. Every budget must be finite. */
export function asProgram({ groups, budgets }: MultipleChoiceProblem): string {
  const name = (group: number, option: number) => `x${group}_${option}`;
  const all = groups.flatMap((group, place) =>
    group.map((option, index) => ({ ...option, name: name(place, index) })),
  );
  const sum = (terms: readonly (readonly [number, string])[]) =>
    terms.map(([factor, of]) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${of}`).join("\n ");
  const rows = budgets.map(
    (limit, row) =>
      ` budget${row}: ${sum(all.map(({ use, name: of }) => [use[row]!, of] as const))} <= ${limit}`,
  );
  const once = groups.map(
    (group, place) =>
      ` group${place}: ${sum(group.map((_, option) => [1, name(place, option)] as const))} = 1`,
  );
  const objective = sum(all.map(({ value, name: of }) => [value, of] as const));
  return `Maximize\n total: ${objective}\nSubject To\n${[...rows, ...once].join("\n")}\nBinary\n ${all.map((option) => option.name).join("\n ")}\nEnd\n`;
}

/**
 * HiGHS (npm highs), an independent branch-and-cut solver, with no gap allowed.
 * @param seconds most time it may take
 */
export function byHighs(program: string, seconds: number): OtherAnswer {
  const answer = highs.solve(program, {
    output_flag: false,
    mip_rel_gap: 0,
    mip_abs_gap: 1e-7,
    time_limit: seconds,
  });
  return { value: answer.ObjectiveValue, proven: answer.Status === "Optimal" };
}
