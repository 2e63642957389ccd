/**
 * Exact choice of one option in each slot where options share resources.
 *
 * A slot is a thing to be settled (a fault); an option settles it with a set of resources (operations, dismantling steps, a
 * borrowed tool). A resource used by several chosen options is paid once (set union). The value grows with the sum of the gains
 * of the settled slots, not additively: price is exponential in condition. We maximise value(gain) - cost(union).
 */
export interface Slot {
  /** Resource indices of each option. */
  readonly options: readonly (readonly number[])[];
  /** Gain when settled by any option. */
  readonly gain: number;
  /** Value lost beside, by option: paint over an original finish. Not negative. */
  readonly optionLoss?: readonly number[] | undefined;
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
  /** Value of a sum of gains; never falls as the sum grows. */
  readonly value: (gain: number) => number;
}

export interface SlotSolution {
  /** Option index by slot, -1 where left. */
  readonly choice: readonly number[];
  readonly objective: number;
  readonly nodes: number;
}

/**
 * Depth-first branch and bound; proves its optimum. Ties go to fewer settled slots, then to earlier options, so the answer never
 * depends on the order of evaluation.
 *
 * Bound at a node: value(gain so far) + sum over open slots of max(0, largestMarginal - cost of what only that slot can use) - cost
 * so far. It is an upper bound because the value gained by settling several slots telescopes into single steps, each at most its
 * largest marginal (source: the usual additive bound for a submodular cost, e.g. Nemhauser and Wolsey 1988, chapter III.3).
 *
 * @returns null where a mandatory slot has no option.
 */
export function chooseSlots(problem: SlotProblem): SlotSolution | null {
  const { slots, cost, base, value } = problem;
  if (slots.some((slot) => slot.mandatory && slot.options.length === 0)) return null;
  const order = searchOrder(slots);
  const exclusive = exclusiveCosts(problem);
  const users = new Uint16Array(cost.length);
  for (const resource of base) users[resource]! += 1;

  const remaining = new Float64Array(order.length + 1);
  for (let depth = order.length - 1; depth >= 0; depth--) {
    const index = order[depth]!;
    const slot = slots[index]!;
    const net = slot.largestMarginal - exclusive[index]!;
    remaining[depth] = remaining[depth + 1]! + (slot.mandatory ? net : Math.max(0, net));
  }

  const choice = new Int16Array(slots.length).fill(-1);
  let best: Int16Array | null = null;
  let bestObjective = -Infinity;
  let nodes = 0;

  const visit = (depth: number, gain: number, spent: number): void => {
    nodes++;
    const here = value(gain);
    if (here - spent + remaining[depth]! <= bestObjective + TIE) return;
    if (depth === order.length) {
      best = choice.slice();
      bestObjective = here - spent;
      return;
    }
    const index = order[depth]!;
    const slot = slots[index]!;
    if (!slot.mandatory) visit(depth + 1, gain, spent);
    for (let option = 0; option < slot.options.length; option++) {
      const resources = slot.options[option]!;
      let added = slot.optionLoss?.[option] ?? 0;
      for (const resource of resources) if (users[resource]!++ === 0) added += cost[resource]!;
      choice[index] = option;
      visit(depth + 1, gain + slot.gain, spent + added);
      choice[index] = -1;
      for (const resource of resources) users[resource]!--;
    }
  };

  let fixed = 0;
  for (let resource = 0; resource < users.length; resource++)
    if (users[resource]! > 0) fixed += cost[resource]!;
  visit(0, 0, fixed);
  return best === null ? null : { choice: Array.from(best), objective: bestObjective, nodes };
}

/** Objectives closer than this count as equal: far below a cent, far above rounding. */
const TIE = 1e-9;

/** Mandatory slots first (they fix shared resources), then those that can add most. */
function searchOrder(slots: readonly Slot[]): number[] {
  return slots
    .map((_, index) => index)
    .sort((a, b) => {
      const left = slots[a]!;
      const right = slots[b]!;
      if (left.mandatory !== right.mandatory) return left.mandatory ? -1 : 1;
      return right.largestMarginal - left.largestMarginal || a - b;
    });
}

/** For each slot the least cost over its options of resources that no other slot and not the base can use. */
function exclusiveCosts({ slots, cost, base }: SlotProblem): Float64Array {
  const owners = new Uint16Array(cost.length);
  for (const resource of base) owners[resource] = 2;
  for (const slot of slots) {
    for (const resource of new Set(slot.options.flat())) owners[resource]! += 1;
  }
  return Float64Array.from(slots, (slot) => {
    let least = Infinity;
    slot.options.forEach((resources, option) => {
      let own = slot.optionLoss?.[option] ?? 0;
      for (const resource of new Set(resources)) if (owners[resource] === 1) own += cost[resource]!;
      least = Math.min(least, own);
    });
    return least === Infinity ? 0 : least;
  });
}
