import type { GroupOption } from "./multipleChoice.ts";

/**
 * Options of a group that no other of it dominates: worth at least as much and using no more of any budget. Of equal ones the first stays.
 * @returns indices, in their order
 */
export function undominatedOptions(group: readonly GroupOption[]): number[] {
  const kept: number[] = [];
  group.forEach((option, index) => {
    const beaten = group.some(
      (other, rival) =>
        rival !== index && dominates(other, option) && (rival < index || !dominates(option, other)),
    );
    if (!beaten) kept.push(index);
  });
  return kept;
}

/** The first undominated option that dominates the given one, or it itself. */
export function dominatorOf(group: readonly GroupOption[], kept: readonly number[], index: number): number {
  return kept.find((rival) => rival === index || dominates(group[rival]!, group[index]!)) ?? index;
}

function dominates(one: GroupOption, other: GroupOption): boolean {
  return one.value >= other.value && one.use.every((amount, budget) => amount <= other.use[budget]!);
}
