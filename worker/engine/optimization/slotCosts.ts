import type { Slot, SlotProblem } from "./slotProblem.ts";

/** Least costs of the slots, for bounds. */
export interface SlotCosts {
  /** Least cost by slot of resources that no other slot and not the base can use. */
  readonly exclusive: Float64Array;
  /** Least cost by slot where every resource is split among the slots that could use it. */
  readonly share: Float64Array;
  /** The same for each option. */
  readonly options: readonly (readonly number[])[];
  /** Options that cost more by what only their slot can use than another costs in full: they settle no more, so they are never chosen. */
  readonly beaten: readonly (readonly boolean[])[];
}

/** Costs of options alone and shared, worked out once for a problem. */
export function slotCosts({ slots, cost, base }: SlotProblem): SlotCosts {
  const owners = ownersOf(slots, cost.length);
  const paid = new Uint8Array(cost.length);
  for (const resource of base) paid[resource] = 1;
  const exclusive = new Float64Array(slots.length);
  const share = new Float64Array(slots.length);
  const options: number[][] = [];
  const beaten: boolean[][] = [];
  slots.forEach((slot, place) => {
    const own: number[] = [];
    const shares: number[] = [];
    let cheapest = Infinity;
    for (const resources of slot.options) {
      let [alone, split, full] = [0, 0, 0];
      for (const resource of resources) {
        if (paid[resource] !== 0) continue;
        const [price, users] = [cost[resource]!, owners[resource]!];
        if (users === 1) alone += price;
        split += price / users;
        full += price;
      }
      own.push(alone);
      shares.push(split);
      if (full < cheapest) cheapest = full;
    }
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
