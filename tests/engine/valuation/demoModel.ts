import demoModel from "../../../data/value-model.json" with { type: "json" };
import valuePrior from "../../../data/value-prior.json" with { type: "json" };
import { compileModel } from "../../../worker/engine/valuation/valueModel.ts";
import type { FittedModel, ValuePrior } from "../../../worker/engine/valuation/valueTables.ts";

export const FITTED = demoModel as unknown as FittedModel;
export const PRIOR = valuePrior as unknown as ValuePrior;
export const COMPILED = compileModel(FITTED, PRIOR);
/** What is believed before any sale of one's own. */
export const MODEL = COMPILED.initial;
