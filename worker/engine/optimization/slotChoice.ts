/**
 * Exact choice of one option in each slot where options share resources.
 *
 * A slot is a thing to be settled (a fault); an option settles it with a set of resources (operations, dismantling steps, a
 * borrowed tool). A resource used by several chosen options is paid once (set union). The value grows with the sum of the gains
 * of the settled slots, not additively: price is exponential in condition. We maximise value(gain) - cost(union).
 */
export interface Slot {
  /** Resource indices of each option, each once. */
  readonly options: readonly (readonly number[])[];
  /** Gain when settled by any option. */
  readonly gain: number;
  readonly mandatory: boolean;
  /** The most that settling this slot can ever add to the value, whatever else is chosen. */
  readonly largestMarginal: number;
}

export interface SlotProblem {
  readonly slots: readonly Slot[];
  /** Cost of each resource, once. Not negative. */
  readonly cost: ArrayLike<number>;
  /** Resources in any case. */
  readonly base: readonly number[];
  /** Value of a sum of gains. */
  readonly value: (gain: number) => number;
}

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

interface SlotCosts {
  /** Least cost by slot of resources that no other slot and not the base can use. */
  readonly exclusive: Float64Array;
  /** Least cost by slot where every resource is split among the slots that could use it. */
  readonly share: Float64Array;
  /** The same for each option. */
  readonly options: readonly (readonly number[])[];
  /** Options that cost more by what only their slot can use than another costs in full: they settle no more, so they are never chosen. */
  readonly beaten: readonly (readonly boolean[])[];
}

function slotCosts({ slots, cost, base }: SlotProblem): SlotCosts {
  const owners = ownersOf(slots, cost.length);
  const paid = new Uint8Array(cost.length);
  for (const resource of base) paid[resource] = 1;
  const sumOf = (resources: readonly number[], share: (resource: number) => number) => {
    let sum = 0;
    for (const resource of resources) if (paid[resource] === 0) sum += share(resource);
    return sum;
  };
  const full = (resource: number) => cost[resource]!;
  const alone = (resource: number) => (owners[resource] === 1 ? cost[resource]! : 0);
  const split = (resource: number) => cost[resource]! / owners[resource]!;
  const exclusive = new Float64Array(slots.length);
  const share = new Float64Array(slots.length);
  const options: number[][] = [];
  const beaten: boolean[][] = [];
  slots.forEach((slot, place) => {
    const own = slot.options.map((resources) => sumOf(resources, alone));
    const shares = slot.options.map((resources) => sumOf(resources, split));
    const cheapest = least(slot.options.map((resources) => sumOf(resources, full)));
    exclusive[place] = least(own);
    share[place] = least(shares);
    options.push(shares);
    beaten.push(own.map((price) => price > cheapest));
  });
  return { exclusive, share, options, beaten };
}

/** How many slots could use each resource. */
function ownersOf(slots: readonly Slot[], count: number): Uint16Array {
  const owners = new Uint16Array(count);
  const lastOwner = new Int32Array(count).fill(-1);
  slots.forEach((slot, place) => {
    for (const resources of slot.options) {
      for (const resource of resources) {
        if (lastOwner[resource] === place) continue;
        lastOwner[resource] = place;
        owners[resource]! += 1;
      }
    }
  });
  return owners;
}

function least(costs: readonly number[]): number {
  let smallest = Infinity;
  for (const cost of costs) if (cost < smallest) smallest = cost;
  return costs.length === 0 ? 0 : smallest;
}

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
