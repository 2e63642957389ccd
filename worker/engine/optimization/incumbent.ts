import type { ChoiceTables } from "./choiceTables.ts";

/** The best choice found. A choice takes its place only if worth more by more than a tie, so that of equal ones the first stays. */
export interface Incumbent {
  /** Option by group. */
  readonly choice: Int32Array;
  /** -Infinity while nothing that fits is known. */
  value: number;
}

/** Takes a choice in if it fits and is worth more. */
export function offer(tables: ChoiceTables, incumbent: Incumbent, choice: Int32Array): void {
  const worth = worthOf(tables, choice);
  if (worth <= incumbent.value + tables.tie || !fits(tables, overrun(tables, choice))) return;
  incumbent.choice.set(choice);
  incumbent.value = worth;
}

export function worthOf({ value }: ChoiceTables, choice: Int32Array): number {
  let sum = 0;
  for (let group = 0; group < choice.length; group++) sum += value[choice[group]!]!;
  return sum;
}

/** What a choice uses over each limit; negative where it leaves some. */
export function overrun({ use, limit }: ChoiceTables, choice: Int32Array): Float64Array {
  const rows = limit.length;
  const over = new Float64Array(rows);
  for (let group = 0; group < choice.length; group++) {
    for (let row = 0; row < rows; row++) over[row]! += use[choice[group]! * rows + row]!;
  }
  for (let row = 0; row < rows; row++) over[row]! -= limit[row]!;
  return over;
}

export function fits({ tolerance }: ChoiceTables, over: Float64Array): boolean {
  for (let row = 0; row < over.length; row++) if (over[row]! > tolerance[row]!) return false;
  return true;
}
