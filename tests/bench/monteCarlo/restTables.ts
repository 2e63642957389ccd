import type { Resource } from "../../../worker/engine/service/resource.ts";
import type { Uncertainty } from "../../../worker/engine/service/uncertainty.ts";
import { aliasTable } from "./aliasTable.ts";
import { type Amounts, addAt, amountsOf } from "./amounts.ts";
import { crossed, isEarly, type Joint, outcomesOf } from "./jointOutcomes.ts";
import type { SharedBits } from "./sharedResources.ts";

/** Joint outcomes of some uncertainties are tabled together, at most so many to a group: one random word draws them all. */
const SLOTS = 64;

/** What is not decided on, by groups of uncertainties. Outcome k of group g stands at [g x slots + k]; the fields are those of `Joint`. */
export interface RestTables extends Amounts {
  readonly groups: number;
  /** The first of them hold what adds to the opening work, or spares of it: it counts where a course is left too. */
  readonly earlyGroups: number;
  readonly slots: number;
  readonly shift: number;
  readonly lowBits: number;
  /** Alias tables by class: [(class x groups + group) x slots + slot]. */
  readonly threshold: Uint32Array;
  readonly alias: Uint16Array;
  readonly told: Float64Array;
  readonly shared: Int32Array;
  /** 1 where the frame is ended. */
  readonly ends: Uint8Array;
  readonly early: Amounts;
}

const COPIED = ["money", "moneyVariance", "minutes", "minutesVariance", "told", "shared"] as const;

export function restTables(
  rest: readonly Uncertainty[],
  classes: number,
  bits: SharedBits,
  resources: readonly Resource[],
): RestTables {
  const grouped = (some: readonly Uncertainty[]) =>
    groupsOf(some.map((one) => outcomesOf(one, classes, bits, resources)));
  const early = rest.filter(isEarly);
  // Jobs of the opening work are done before a look ends the frame.
  const first = grouped([
    ...early.filter(({ job }) => job !== null),
    ...early.filter(({ job }) => job === null),
  ]);
  const groups = [...first, ...grouped(rest.filter((one) => !isEarly(one)))];
  const size = groups.length * SLOTS;
  const tables = {
    ...amountsOf(size),
    told: new Float64Array(size),
    shared: new Int32Array(size),
    ends: new Uint8Array(size),
    early: amountsOf(size),
    threshold: new Uint32Array(classes * size),
    alias: new Uint16Array(classes * size),
  };
  groups.forEach((joints, group) => {
    joints.forEach((joint, k) => {
      const at = group * SLOTS + k;
      for (const field of COPIED) tables[field][at] = joint[field];
      tables.ends[at] = joint.ends ? 1 : 0;
      addAt(tables.early, at, joint.early);
    });
    for (let z = 0; z < classes; z++) {
      const chances = joints.map((joint) => joint.chances[z]!);
      const { threshold, alias } = aliasTable(chances, SLOTS);
      const at = (z * groups.length + group) * SLOTS;
      tables.threshold.set(threshold, at);
      tables.alias.set(alias, at);
    }
  });
  const shift = 32 - Math.log2(SLOTS);
  return {
    ...tables,
    groups: groups.length,
    earlyGroups: first.length,
    slots: SLOTS,
    shift,
    lowBits: 2 ** shift - 1,
  };
}

/** Neighbours together while their joint outcomes fit a table. */
function groupsOf(all: readonly (readonly Joint[])[]): readonly (readonly Joint[])[] {
  const groups: (readonly Joint[])[] = [];
  for (const outcomes of all) {
    const last = groups.at(-1);
    if (last && last.length * outcomes.length <= SLOTS) groups[groups.length - 1] = crossed(last, outcomes);
    else groups.push(outcomes);
  }
  return groups;
}
