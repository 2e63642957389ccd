import type { AttributeDefault } from "../bicycle.ts";
import type { Acquittal, Check, Prior, PriorModifier } from "./check.ts";
import type { HistoryTable, Symptom } from "./history/historyTable.ts";
import type { TyreName } from "./tyreName.ts";

/** The tables that this room reads. */
export interface InspectionTables {
  readonly checks: readonly Check[];
  readonly priors: readonly Prior[];
  readonly priorModifiers: readonly PriorModifier[];
  readonly acquittals: readonly Acquittal[];
  readonly attributeDefaults: readonly AttributeDefault[];
  /** Traditional names of tyres with their bead seat diameters. */
  readonly tyreNames: readonly TyreName[];
  readonly history: HistoryTable;
  /** Levels that known causes explain. */
  readonly symptoms: readonly Symptom[];
}
