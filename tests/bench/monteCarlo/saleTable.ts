import type { Sale } from "../../../worker/engine/decision/branch.ts";
import { logNormalMean } from "../../../worker/engine/statistics/logNormal.ts";
import { type AliasTable, aliasTable } from "./aliasTable.ts";

/** What is sold: a lot drawn, at a log-normal price of mean 1. */
export interface SaleTable {
  readonly lots: AliasTable;
  /** Average takings by lot. */
  readonly takings: Float64Array;
  /** Log of the price factor's median, and its spread. */
  readonly logMedian: number;
  readonly logSd: number;
}

/** A piece that is fit and sells, or not. */
export interface Piece {
  readonly chanceUsable: number;
  readonly chanceSold: number;
  /** What reaches the user where it sells. */
  readonly net: number;
}

/**
 * One thing sold, or every set of pieces that may sell.
 * @param pieces those of the sale; left aside where it has no lots
 */
export function saleTable(sale: Sale | null, pieces: readonly Piece[]): SaleTable {
  if (!sale) return { lots: aliasTable([1]), takings: new Float64Array(2), logMedian: 0, logSd: 0 };
  const mean = sale.share * logNormalMean(sale.price);
  let sets = [{ chance: 1, takings: sale.lots ? 0 : mean }];
  if (sale.lots) {
    for (const { chanceUsable, chanceSold, net } of pieces) {
      const sold = chanceUsable * chanceSold;
      sets = sets.flatMap(({ chance, takings }) => [
        { chance: chance * (1 - sold), takings },
        { chance: chance * sold, takings: takings + net },
      ]);
    }
  }
  const average = sets.reduce((sum, { chance, takings }) => sum + chance * takings, 0);
  if (Math.abs(average - mean) > 1e-6 * mean)
    throw new Error(`the pieces bring ${average} on average, the sale ${mean}`);
  const { logSd } = sale.price;
  const lots = aliasTable(sets.map(({ chance }) => chance));
  const takings = new Float64Array(lots.size);
  sets.forEach((one, place) => {
    takings[place] = one.takings;
  });
  return { lots, takings, logMedian: -(logSd ** 2) / 2, logSd };
}
