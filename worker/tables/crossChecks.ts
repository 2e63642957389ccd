import { unnamedStandards } from "./citedStandards.ts";
import { cureGaps } from "./cureCoverage.ts";
import { cheaperWhenWorse } from "./cureOrder.ts";
import { forbiddenWork } from "./forbiddenWork.ts";
import { historyGaps } from "./historyLinks.ts";
import { openEndedWork } from "./openEndedWork.ts";
import type { ParsedTables } from "./parsedTables.ts";
import { priorGaps } from "./priorCoverage.ts";
import { unknownNames } from "./references.ts";
import { repeatedRows } from "./repeatedRows.ts";
import { pieceGaps } from "./sellablePieces.ts";
import type { TableError } from "./tableError.ts";
import { orderCycles } from "./workingOrderCycles.ts";

/** What the tables say of one another, in an order in which each check may trust those before it. */
const CHECKS = [
  repeatedRows,
  unknownNames,
  priorGaps,
  historyGaps,
  orderCycles,
  forbiddenWork,
  openEndedWork,
  unnamedStandards,
  cureGaps,
  cheaperWhenWorse,
  pieceGaps,
];

/** Every breach of the rules between tables, lazily: the first one is enough to refuse them. */
export function* crossChecks(tables: ParsedTables): Generator<TableError> {
  for (const check of CHECKS) {
    let sound = true;
    for (const error of check(tables)) {
      sound = false;
      yield error;
    }
    if (!sound) return;
  }
}
