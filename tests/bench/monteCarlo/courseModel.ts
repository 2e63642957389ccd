import { stillAhead } from "../../../worker/engine/decision/courseBranch.ts";
import { listedPieces, whenFrameSells } from "../../../worker/engine/decision/partsSale.ts";
import type { Situation } from "../../../worker/engine/decision/situation.ts";
import type { OpenCourse, Unknown } from "../../../worker/engine/decision/weighedCourse.ts";
import type { Uncertainty } from "../../../worker/engine/service/uncertainty.ts";
import { type AliasTable, aliasTable } from "./aliasTable.ts";
import type { Amounts } from "./amounts.ts";
import { type LeafTables, leafTables } from "./leafTables.ts";
import { type RestTables, restTables } from "./restTables.ts";
import { type SaleTable, saleTable } from "./saleTable.ts";
import { sharedBits, sharedCosts } from "./sharedResources.ts";

/** A rideable course with all that is not known of it, as flat tables to draw from. */
export interface CourseModel {
  /** Class of history and leaf together: what was decided on, drawn at once. */
  readonly cells: AliasTable;
  readonly leafOf: Uint16Array;
  readonly classOf: Uint8Array;
  readonly leaves: LeafTables;
  readonly rest: RestTables;
  readonly shared: readonly [Amounts, Amounts];
  /** By what is sold. */
  readonly sales: readonly SaleTable[];
  readonly speedFactor: number;
  readonly speedSpread: number;
  readonly hourlyGoal: number;
  readonly otherMinutes: number;
}

/**
 * The same model that the engine integrates: classes of history by their weights; in a class every uncertainty on its own; on those decided the course goes
 * the way its tree says; resources that several ask for are paid once; the first thing that ends the frame ends the work; money and minutes normal about
 * their means, money log-normal where nothing is sold; pieces sell one by one; a price that all of them share, of which what is told takes its part. Chances are multiplied anew from those of the
 * ways.
 */
export function courseModel(situation: Situation, course: OpenCourse, unknown: Unknown): CourseModel {
  const { ledger, settled, unseen, parts, salvage, frameUnsaleableChance, book } = situation;
  const orders = book.catalogue.defaults.delivery.orders[course.course as "restore" | "make-safe"];
  const { resources } = ledger.withOrders(orders);
  const classes = unseen.weights.length;
  const bits = sharedBits([...unknown.decided, ...unknown.joint]);
  const cells = cellsOf(unknown, course.plan.endsTitle, unseen.weights);
  const { speedFactor, speedSpread, hourlyGoal } = settled.workshop;
  return {
    cells: aliasTable(cells.map(({ chance }) => chance)),
    leafOf: Uint16Array.from(cells, ({ leaf }) => leaf),
    classOf: Uint8Array.from(cells, ({ z }) => z),
    leaves: leafTables(situation, course, unknown, bits, resources),
    rest: restTables(unknown.joint, classes, bits, resources),
    shared: sharedCosts(bits, resources),
    sales: [
      saleTable(unknown.sale, []),
      saleTable(unknown.change.sale, whenFrameSells(parts.list, frameUnsaleableChance)),
      saleTable(salvage.sale, listedPieces(parts.withoutFrame)),
      saleTable(null, []),
    ],
    speedFactor,
    speedSpread,
    hourlyGoal,
    otherMinutes: stillAhead(situation).minutes,
  };
}

interface Cell {
  readonly chance: number;
  readonly leaf: number;
  readonly z: number;
}

/** The papers end it, or a leaf is reached in a class. */
function cellsOf({ decided, leaves }: Unknown, endsTitle: number, weights: Float64Array): readonly Cell[] {
  const cells: Cell[] = [{ chance: endsTitle, leaf: leaves.length, z: 0 }];
  leaves.forEach(({ path: { ways } }, leaf) => {
    for (let z = 0; z < weights.length; z++) {
      let chance = (1 - endsTitle) * weights[z]!;
      ways.forEach((way, place) => {
        chance *= chanceOf(decided[place]!, way, z);
      });
      cells.push({ chance, leaf, z });
    }
  });
  return cells;
}

/** @param way -1 where nothing comes of it */
function chanceOf({ ways }: Uncertainty, way: number, z: number): number {
  if (way >= 0) return ways[way]!.chances[z]!;
  let left = 1;
  for (const { chances } of ways) left -= chances[z]!;
  return Math.max(0, left);
}
