import { type SlotCosts, slotCosts } from "./slotCosts.ts";
import type { Slot, SlotProblem } from "./slotProblem.ts";

export interface SlotSolution {
  /** Option index by slot, -1 where left. */
  readonly choice: readonly number[];
  readonly objective: number;
  readonly nodes: number;
}

/**
 * Depth-first branch and bound; proves its optimum. Ties go to the first found: promising slots are settled before they are left, options in
 * their order; what cannot pay is left.
 *
 * Two bounds hold at every node, and the lower is taken: value(gain so far) + sum over open slots of max(0, largestMarginal - least cost) - cost so far, where
 * cost counts (a) what only that slot can use beside all that is paid, or (b) an equal share of every resource among the slots that could use it,
 * for settled and open slots alike. The value gained by settling several slots telescopes into single steps, each at most its largest marginal; a union
 * costs at least the sum of its users' shares (cost splitting, as in the additive bounds of Nemhauser and Wolsey 1988, chapter III.3).
 *
 * @returns null where a mandatory slot has no option.
 */
export function chooseSlots(problem: SlotProblem): SlotSolution | null {
  const { slots, cost, base, value } = problem;
  if (slots.some((slot) => slot.mandatory && slot.options.length === 0)) return null;
  const costs = slotCosts(problem);
  const order = searchOrder(slots, costs);
  const exclusiveLeft = openBound(order, slots, costs.exclusive);
  const sharedLeft = openBound(order, slots, costs.share);
  const users = new Uint16Array(cost.length);
  let fixed = 0;
  for (const resource of base) if (users[resource]!++ === 0) fixed += cost[resource]!;

  const choice = new Int16Array(slots.length).fill(-1);
  let best: Int16Array | null = null;
  let bestObjective = -Infinity;
  let nodes = 0;

  const visit = (depth: number, gain: number, spent: number, shares: number): void => {
    nodes++;
    const here = value(gain);
    const bound = here + Math.min(exclusiveLeft[depth]! - spent, sharedLeft[depth]! - shares);
    if (bound <= bestObjective + TIE) return;
    if (depth === order.length) {
      best = choice.slice();
      bestObjective = here - spent;
      return;
    }
    const index = order[depth]!;
    const slot = slots[index]!;
    const promising = slot.largestMarginal > costs.exclusive[index]!;
    if (slot.mandatory || promising) {
      for (let option = 0; option < slot.options.length; option++) {
        if (costs.beaten[index]![option]) continue;
        const resources = slot.options[option]!;
        let added = 0;
        for (let i = 0; i < resources.length; i++) {
          const resource = resources[i]!;
          if (users[resource]!++ === 0) added += cost[resource]!;
        }
        choice[index] = option;
        visit(depth + 1, gain + slot.gain, spent + added, shares + costs.options[index]![option]!);
        choice[index] = -1;
        for (let i = 0; i < resources.length; i++) users[resources[i]!]!--;
      }
    }
    if (!slot.mandatory) visit(depth + 1, gain, spent, shares);
  };

  visit(0, 0, fixed, fixed);
  return best === null ? null : { choice: Array.from(best), objective: bestObjective, nodes };
}

/** Objectives closer than this count as equal: far below a cent, far above rounding. */
const TIE = 1e-9;

/** The most that the slots from each depth on can still add, by a least cost for each slot. */
function openBound(order: readonly number[], slots: readonly Slot[], least: Float64Array): Float64Array {
  const open = new Float64Array(order.length + 1);
  for (let depth = order.length - 1; depth >= 0; depth--) {
    const index = order[depth]!;
    const slot = slots[index]!;
    const net = slot.largestMarginal - least[index]!;
    open[depth] = open[depth + 1]! + (slot.mandatory ? net : Math.max(0, net));
  }
  return open;
}

/** Mandatory slots first (they fix shared resources), then those that promise most. */
function searchOrder(slots: readonly Slot[], { share }: SlotCosts): number[] {
  const promise = slots.map((slot, index) => slot.largestMarginal - share[index]!);
  return slots
    .map((_, index) => index)
    .sort((a, b) => {
      if (slots[a]!.mandatory !== slots[b]!.mandatory) return slots[a]!.mandatory ? -1 : 1;
      return promise[b]! - promise[a]! || a - b;
    });
}
