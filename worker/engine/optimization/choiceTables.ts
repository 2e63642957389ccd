import { DomainError } from "../domainError.ts";
import type { MultipleChoiceProblem } from "./multipleChoice.ts";
import { undominatedOptions } from "./undominated.ts";

/** What sums of uses may go over a budget by, as a share of it: rounding of 2.5 + 3 + 2.5 must not shut out what fits 8. */
const BUDGET_TOLERANCE = 1e-9;
/** Totals closer than this share of all values at stake count as equal. As wide as the tolerance of the budgets is worth at their prices. */
const VALUE_TOLERANCE = 1e-9;

/** A multiple-choice problem in flat tables, of undominated options and budgets that can bind; uses in units of each budget's largest. */
export interface ChoiceTables {
  /** Problem's budget of each row. */
  readonly budgets: readonly number[];
  /** Problem's unit of each row. */
  readonly unit: readonly number[];
  readonly limit: Float64Array;
  /** What a sum of uses may go over the limit by. */
  readonly tolerance: Float64Array;
  /** First option of each group, and the number of options at the end. */
  readonly first: Int32Array;
  readonly groupOf: Int32Array;
  /** Problem's index of each option in its group. */
  readonly index: Int32Array;
  readonly value: Float64Array;
  /** Row by row for each option. */
  readonly use: Float64Array;
  /** Totals closer than this count as equal. */
  readonly tie: number;
}

/** @throws DomainError for an empty group, uses that do not answer to the budgets one by one, or a figure that is negative or not finite where it must be */
export function choiceTables({ groups, budgets }: MultipleChoiceProblem): ChoiceTables {
  budgets.forEach((limit, row) => {
    if (!(limit >= 0))
      throw new DomainError("out-of-domain", `budget ${row}`, limit, "an amount of 0 or more");
  });
  const rows = bindingRows({ groups, budgets });
  const unit = rows.map((row) => most(groups.flatMap((group) => group.map(({ use }) => use[row]!))));
  const kept = groups.map(undominatedOptions);
  const first = new Int32Array(groups.length + 1);
  kept.forEach((options, group) => {
    first[group + 1] = first[group]! + options.length;
  });
  const count = first[groups.length]!;
  const tables = {
    groupOf: new Int32Array(count),
    index: new Int32Array(count),
    value: new Float64Array(count),
    use: new Float64Array(count * rows.length),
  };
  kept.forEach((options, group) => {
    options.forEach((option, place) => {
      const at = first[group]! + place;
      const { value, use } = groups[group]![option]!;
      tables.groupOf[at] = group;
      tables.index[at] = option;
      tables.value[at] = value;
      rows.forEach((row, place) => {
        tables.use[at * rows.length + place] = use[row]! / unit[place]!;
      });
    });
  });
  const limit = Float64Array.from(rows, (row, place) => budgets[row]! / unit[place]!);
  const stake = groups.reduce((sum, group) => sum + most(group.map(({ value }) => Math.abs(value))), 0);
  return {
    budgets: rows,
    unit,
    limit,
    tolerance: limit.map((amount) => BUDGET_TOLERANCE * amount),
    first,
    ...tables,
    tie: VALUE_TOLERANCE * stake,
  };
}

/** Budgets that not every choice keeps to. */
function bindingRows({ groups, budgets }: MultipleChoiceProblem): number[] {
  const total = budgets.map(() => 0);
  groups.forEach((group, place) => {
    if (group.length === 0)
      throw new DomainError("out-of-domain", `group ${place}`, "none", "at least one option");
    for (const { value, use } of group) {
      if (!Number.isFinite(value)) {
        throw new DomainError("out-of-domain", `value in group ${place}`, value, "a finite number");
      }
      if (use.length !== budgets.length || !use.every((amount) => amount >= 0 && amount < Infinity)) {
        throw new DomainError(
          "out-of-domain",
          `use in group ${place}`,
          use,
          "one finite amount of 0 or more for each budget",
        );
      }
    }
    budgets.forEach((_, row) => {
      total[row]! += most(group.map(({ use }) => use[row]!));
    });
  });
  return budgets.flatMap((limit, row) => (total[row]! > limit ? [row] : []));
}

function most(amounts: readonly number[]): number {
  return amounts.reduce((largest, amount) => Math.max(largest, amount), 0);
}
