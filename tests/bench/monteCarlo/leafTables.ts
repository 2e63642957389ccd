import { outlayBesideWork, titleBranches, type Work } from "../../../worker/engine/decision/courseBranch.ts";
import type { Leaf } from "../../../worker/engine/decision/discovery.ts";
import { openingWork } from "../../../worker/engine/decision/openingWork.ts";
import type { Situation } from "../../../worker/engine/decision/situation.ts";
import type { OpenCourse, Unknown } from "../../../worker/engine/decision/weighedCourse.ts";
import type { Resource } from "../../../worker/engine/service/resource.ts";
import { usedWork } from "../../../worker/engine/service/uncertainty.ts";
import { type Amounts, addAt, amountsOf, fixedMoney } from "./amounts.ts";
import { bitsOf, type SharedBits } from "./sharedResources.ts";

/** What is sold in the end. */
export const FINISHED = 0;
export const CHANGED = 1;
export const SALVAGED = 2;
export const NOTHING_SOLD = 3;

/** Where the work may come to stand, by leaf of the tree of discoveries; a last one where the papers end it. Purchase, fee and packing are counted. */
export interface LeafTables extends Amounts {
  readonly sold: Uint8Array;
  readonly told: Float64Array;
  /** Bits of the shared resources that it has paid for. */
  readonly used: Int32Array;
  /** What it costs where something that was not decided on ends the frame; what was spent on that comes on top. */
  readonly end: Amounts;
}

export function leafTables(
  situation: Situation,
  { plan }: OpenCourse,
  { leaves, sale, change }: Unknown,
  bits: SharedBits,
  resources: readonly Resource[],
): LeafTables {
  const { salvage, ledger } = situation;
  const { work: opening } = openingWork(plan, ledger);
  const size = leaves.length + 1;
  const tables = {
    ...amountsOf(size),
    sold: new Uint8Array(size).fill(NOTHING_SOLD),
    told: new Float64Array(size),
    used: new Int32Array(size),
    end: amountsOf(size),
  };
  const beside = (sold: unknown) => fixedMoney(outlayBesideWork(situation, sold !== null));
  leaves.forEach(({ kind, path }, at) => {
    const sunk = [opening, path.spent, takenApart(path, resources)];
    const salvaged = [beside(salvage.sale), salvage, ...sunk];
    addAt(tables.end, at, ...salvaged);
    if (kind === "on") {
      tables.sold[at] = FINISHED;
      tables.told[at] = path.told;
      tables.used[at] = bitsOf(path.used, bits);
      addAt(tables, at, beside(sale), plan, path.work);
    } else if (kind === "changed") {
      tables.sold[at] = CHANGED;
      addAt(tables, at, beside(change.sale), change.work, ...sunk);
    } else {
      tables.sold[at] = SALVAGED;
      addAt(tables, at, ...salvaged);
    }
  });
  for (const { outlay, minutes } of titleBranches(situation, plan))
    addAt(tables, size - 1, { money: outlay, minutes });
  return tables;
}

/** What was used on the way beside the jobs. */
function takenApart({ opened }: Leaf["path"], resources: readonly Resource[]): Work {
  const { money, minutes } = usedWork(opened, resources);
  return { money: { mean: money, variance: 0 }, minutes: { mean: minutes, variance: 0 } };
}
