import type { ChoiceTables } from "./choiceTables.ts";
import { descend } from "./descent.ts";
import type { OpenGroups } from "./openGroups.ts";
import { FREE, type PriceBasis, swapKey } from "./priceBasis.ts";
import type { Scratch } from "./scratch.ts";

/** Shares of options in the relaxation are whole to this. */
const SHARE_TOLERANCE = 1e-9;

/**
 * The most that the open groups can be worth in the linear relaxation, or a number at most `cutoff` if they cannot be worth more.
 *
 * Minimises L(p) = value + p·left + sum over groups of max(value − p·use) over prices p ≥ 0, from the prices of the basis, and leaves the best ones in it.
 * L bounds every choice at any such p (weak duality), and it is worked out afresh from the prices, so that the bound holds whatever rounding does. The least L
 * is that of the linear relaxation. L is convex and piecewise linear: each step gives up one tie, holds the others and goes down the edge until L rises
 * again, which is the dual simplex method with long steps, its basis as small as the number of budgets.
 * Sources: Geoffrion 1974 (Lagrangian relaxation); Dantzig & Van Slyke 1967 (a key variable for each group); Maros 2003, chapter 10 (long steps).
 * @returns -Infinity where even fractions of options cannot keep to the budgets
 */
export function lagrangianBound(
  tables: ChoiceTables,
  open: OpenGroups,
  basis: PriceBasis,
  cutoff: number,
  scratch: Scratch,
): number {
  const rows = tables.limit.length;
  dropDeadTies(tables, open, basis, scratch);
  const mostSteps = 60 + 12 * rows;
  let bound = Infinity;
  for (let step = 0; step < mostSteps; step++) {
    bound = boundAtPrices(tables, open, basis, scratch);
    if (bound <= cutoff) return bound;
    leftOver(tables, open, basis, scratch);
    const leaving = steepest(tables, basis, scratch);
    if (leaving < 0) break;
    const moved = descend(tables, open, basis, leaving, scratch);
    if (moved === "unbounded") return -Infinity;
    if (moved === "stuck") break;
  }
  return bound;
}

/** Ties of options that are no longer open are only held. */
function dropDeadTies(
  { groupOf }: ChoiceTables,
  open: OpenGroups,
  { tie, key }: PriceBasis,
  scratch: Scratch,
): void {
  const { alive } = scratch;
  alive.fill(0);
  for (let at = 0; at < open.options.length; at++) alive[open.options[at]!] = 1;
  for (let at = 0; at < tie.length; at++) {
    const option = tie[at]!;
    if (option === FREE || option >= groupOf.length) continue;
    if (!alive[option] || !alive[key[groupOf[option]!]!]) tie[at] = FREE;
  }
  for (let place = 0; place < open.groups.length; place++) {
    const group = open.groups[place]!;
    if (!alive[key[group]!]) key[group] = open.options[open.start[place]!]!;
  }
}

/** L at the prices; fills in the reduced values and the regrets' yardstick, and moves keys to the best where they are not. */
function boundAtPrices(
  { groupOf, value, use, tie: near }: ChoiceTables,
  open: OpenGroups,
  { prices, key, tie }: PriceBasis,
  { reduced, best }: Scratch,
): number {
  const rows = prices.length;
  let bound = open.value;
  for (let row = 0; row < rows; row++) bound += prices[row]! * Math.max(0, open.left[row]!);
  for (let place = 0; place < open.groups.length; place++) {
    let [largest, winner] = [-Infinity, -1];
    for (let at = open.start[place]!; at < open.start[place + 1]!; at++) {
      const option = open.options[at]!;
      let worth = value[option]!;
      for (let row = 0; row < rows; row++) worth -= prices[row]! * use[option * rows + row]!;
      reduced[option] = worth;
      if (worth > largest) [largest, winner] = [worth, option];
    }
    const group = open.groups[place]!;
    best[group] = largest;
    bound += largest;
    if (largest - reduced[key[group]!]! > 1e-3 * near) {
      key[group] = winner;
      for (let at = 0; at < rows; at++) {
        const option = tie[at]!;
        if (option !== FREE && option < groupOf.length && groupOf[option] === group) tie[at] = FREE;
      }
    }
  }
  return bound;
}

/** What the keys leave of the budgets, and the share of each tie that would take it up. */
function leftOver(
  { use }: ChoiceTables,
  open: OpenGroups,
  basis: PriceBasis,
  { slack, share }: Scratch,
): void {
  const rows = slack.length;
  for (let row = 0; row < rows; row++) slack[row] = Math.max(0, open.left[row]!);
  for (let place = 0; place < open.groups.length; place++) {
    const option = basis.key[open.groups[place]!]!;
    for (let row = 0; row < rows; row++) slack[row]! -= use[option * rows + row]!;
  }
  for (let at = 0; at < rows; at++) {
    let sum = 0;
    for (let row = 0; row < rows; row++) sum += slack[row]! * basis.inverse[at * rows + row]!;
    share[at] = sum;
  }
}

/** The tie to give up, or -1 where the shares make a relaxed choice; a negative share of a key is turned into one of a tie. */
function steepest(
  { groupOf, use }: ChoiceTables,
  basis: PriceBasis,
  { share, keyShare, slack }: Scratch,
): number {
  const { tie } = basis;
  let [leaving, worst, group] = [-1, -SHARE_TOLERANCE, -1];
  for (let at = 0; at < tie.length; at++) {
    const option = tie[at]!;
    if (option >= 0 && option < groupOf.length) keyShare[groupOf[option]!] = 1;
  }
  for (let at = 0; at < tie.length; at++) {
    const option = tie[at]!;
    const amount = option === FREE ? -Math.abs(share[at]!) : share[at]!;
    if (amount < worst) [leaving, worst] = [at, amount];
    if (option >= 0 && option < groupOf.length) keyShare[groupOf[option]!]! -= share[at]!;
  }
  for (let at = 0; at < tie.length; at++) {
    const option = tie[at]!;
    if (option < 0 || option >= groupOf.length) continue;
    if (keyShare[groupOf[option]!]! < worst) [worst, group] = [keyShare[groupOf[option]!]!, groupOf[option]!];
  }
  if (group < 0) return leaving;
  leaving = -1;
  for (let at = 0; at < tie.length; at++) {
    const option = tie[at]!;
    if (option < 0 || option >= groupOf.length || groupOf[option] !== group) continue;
    if (leaving < 0 || share[at]! > share[leaving]!) leaving = at;
  }
  const old = basis.key[group]!;
  swapKey(basis, leaving, group, groupOf);
  const key = basis.key[group]!;
  for (let row = 0; row < slack.length; row++) {
    slack[row]! += use[old * slack.length + row]! - use[key * slack.length + row]!;
  }
  return leaving;
}
