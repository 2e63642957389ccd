import type { Check } from "../inspection/check.ts";
import { compileInspection } from "../inspection/compileInspection.ts";
import type { InspectionIndex } from "../inspection/inspectionIndex.ts";
import { compileService, type ServiceIndex } from "../service/serviceIndex.ts";
import { compileModel, type ValueModel } from "../valuation/valueModel.ts";
import type { Catalogue } from "./catalogue.ts";

/** The catalogue with its look-ups: compiled once, passed to every call, never changed. */
export interface Book {
  readonly catalogue: Catalogue;
  readonly inspection: InspectionIndex;
  readonly checks: ReadonlyMap<string, Check>;
  readonly service: ServiceIndex;
  readonly value: ValueModel;
}

/** Compiles a catalogue that the loader has cross-checked. */
export function compileBook(catalogue: Catalogue): Book {
  return {
    catalogue,
    inspection: compileInspection(catalogue.inspection),
    checks: new Map(catalogue.inspection.checks.map((check) => [check.id, check])),
    service: compileService(catalogue.service),
    value: compileModel(catalogue.value.model, catalogue.value.prior),
  };
}
