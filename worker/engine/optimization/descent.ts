import type { ChoiceTables } from "./choiceTables.ts";
import type { OpenGroups } from "./openGroups.ts";
import { FREE, type PriceBasis, replaceTie } from "./priceBasis.ts";
import type { Scratch } from "./scratch.ts";

/** A slope or a difference of costs this small against the direction is rounding. */
const FLAT = 1e-10;
/** A bound that falls for ever this fast proves that nothing fits. */
const FALLING = 1e-7;

/**
 * Moves the prices along the edge where all ties but one are held, past every bend until the bound would rise, and takes in the tie of that bend.
 * @returns "unbounded" where the bound falls for ever, "stuck" where rounding hides the next bend
 */
export function descend(
  tables: ChoiceTables,
  open: OpenGroups,
  basis: PriceBasis,
  leaving: number,
  scratch: Scratch,
): "moved" | "unbounded" | "stuck" {
  const { groupOf, use } = tables;
  const { prices, key, tie } = basis;
  const { direction, slack, rise, turn, rival, tied, entering } = scratch;
  const rows = prices.length;
  let slope = setDirection(basis, leaving, scratch);
  tied.fill(0);
  for (let at = 0; at < rows; at++) {
    const option = tie[at]!;
    if (at !== leaving && option !== FREE && option < groupOf.length) tied[groupOf[option]!] = 1;
  }
  for (let place = 0; place < open.groups.length; place++) {
    for (let at = open.start[place]!; at < open.start[place + 1]!; at++) {
      const option = open.options[at]!;
      let sum = 0;
      for (let row = 0; row < rows; row++) sum += use[option * rows + row]! * direction[row]!;
      rise[option] = sum;
    }
    nextTurn(open, place, basis, scratch, 0);
  }
  let [end, floor] = [Infinity, -1];
  for (let row = 0; row < rows; row++) {
    if (direction[row]! >= -FLAT || holds(tie, groupOf.length + row, leaving)) continue;
    const zero = prices[row]! / -direction[row]!;
    if (zero < end) [end, floor] = [zero, row];
  }
  for (;;) {
    let [nearest, place] = [end, -1];
    for (let at = 0; at < open.groups.length; at++) {
      const group = open.groups[at]!;
      if (turn[group]! < nearest) [nearest, place] = [turn[group]!, at];
    }
    if (nearest === Infinity) return fallsForEver(open, basis, scratch) ? "unbounded" : "stuck";
    if (place < 0) {
      entering.fill(0);
      entering[floor] = 1;
      move(prices, direction, nearest);
      prices[floor] = 0;
      replaceTie(basis, leaving, groupOf.length + floor, entering);
      return "moved";
    }
    const group = open.groups[place]!;
    const [old, next] = [key[group]!, rival[group]!];
    slope += rise[old]! - rise[next]!;
    if (slope >= -FLAT || tied[group]) {
      for (let row = 0; row < rows; row++) entering[row] = use[next * rows + row]! - use[old * rows + row]!;
      move(prices, direction, nearest);
      replaceTie(basis, leaving, next, entering);
      return "moved";
    }
    key[group] = next;
    nextTurn(open, place, basis, scratch, nearest);
  }

  function setDirection({ inverse }: PriceBasis, at: number, { share }: Scratch): number {
    // A share below 0 asks for a tie's option to become worse; of a tie only held, for whichever way is down.
    const sign = share[at]! > 0 && tie[at] === FREE ? -1 : 1;
    let largest = 0;
    for (let row = 0; row < rows; row++) largest = Math.max(largest, Math.abs(inverse[at * rows + row]!));
    let sum = 0;
    for (let row = 0; row < rows; row++) {
      direction[row] = (sign * inverse[at * rows + row]!) / largest;
      sum += direction[row]! * slack[row]!;
    }
    return sum;
  }
}

/** Whether the least that the groups can use, weighted by the direction, is more than what is left: then nothing fits (Farkas). */
function fallsForEver(open: OpenGroups, { key }: PriceBasis, { direction, rise }: Scratch): boolean {
  let slope = 0;
  for (let row = 0; row < direction.length; row++) {
    if (direction[row]! < -FLAT) return false;
    slope += Math.max(0, direction[row]!) * Math.max(0, open.left[row]!);
  }
  for (const group of open.groups) slope -= rise[key[group]!]!;
  return slope < -FALLING;
}

/** Where beyond a point along the direction the key of a group is overtaken first. */
function nextTurn(
  open: OpenGroups,
  place: number,
  { key }: PriceBasis,
  { reduced, rise, turn, rival }: Scratch,
  from: number,
): void {
  const group = open.groups[place]!;
  const current = key[group]!;
  let [nearest, winner] = [Infinity, -1];
  for (let at = open.start[place]!; at < open.start[place + 1]!; at++) {
    const option = open.options[at]!;
    const gain = rise[current]! - rise[option]!;
    if (gain <= FLAT) continue;
    const meets = Math.max(from, (reduced[current]! - reduced[option]!) / gain);
    if (meets < nearest || (meets === nearest && rise[option]! < rise[winner]!))
      [nearest, winner] = [meets, option];
  }
  turn[group] = nearest;
  rival[group] = winner;
}

function holds(tie: Int32Array, one: number, leaving: number): boolean {
  for (let at = 0; at < tie.length; at++) if (at !== leaving && tie[at] === one) return true;
  return false;
}

function move(prices: Float64Array, direction: Float64Array, distance: number): void {
  for (let row = 0; row < prices.length; row++) {
    prices[row] = Math.max(0, prices[row]! + distance * direction[row]!);
  }
}
