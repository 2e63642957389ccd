import demoModel from "../../../data/value-model.json" with { type: "json" };
import { compileModel } from "../../../worker/engine/valuation/valueModel.ts";
import type { FittedModel } from "../../../worker/engine/valuation/valueTables.ts";

export const FITTED = demoModel as unknown as FittedModel;
export const MODEL = compileModel(FITTED);
