import acquittals from "../data/acquittals.json" with { type: "json" };
import attributeDefaults from "../data/attribute-defaults.json" with { type: "json" };
import cautions from "../data/cautions.json" with { type: "json" };
import checks from "../data/checks.json" with { type: "json" };
import defaults from "../data/defaults.json" with { type: "json" };
import evidenceRules from "../data/evidence-rules.json" with { type: "json" };
import history from "../data/history.json" with { type: "json" };
import operations from "../data/operations.json" with { type: "json" };
import parts from "../data/parts.json" with { type: "json" };
import partsValue from "../data/parts-value.json" with { type: "json" };
import priorModifiers from "../data/prior-modifiers.json" with { type: "json" };
import priors from "../data/priors.json" with { type: "json" };
import remedies from "../data/remedies.json" with { type: "json" };
import selling from "../data/selling.json" with { type: "json" };
import steps from "../data/steps.json" with { type: "json" };
import tools from "../data/tools.json" with { type: "json" };
import tyreMarkings from "../data/tyre-markings.json" with { type: "json" };
import valueModel from "../data/value-model.json" with { type: "json" };
import valuePrior from "../data/value-prior.json" with { type: "json" };
import type { Catalogue } from "./engine/decision/catalogue.ts";
import { loadCatalogue } from "./tables/loadCatalogue.ts";
import type { RawTables } from "./tables/rawTables.ts";

/** The tables that ship with the code, unparsed. */
export const SHIPPED_TABLES: RawTables = {
  checks,
  priors,
  priorModifiers,
  acquittals,
  history,
  evidenceRules,
  attributeDefaults,
  tyreMarkings,
  steps,
  operations,
  remedies,
  parts,
  tools,
  cautions,
  defaults,
  partsValue,
  valueModel,
  valuePrior,
  selling,
};

let shipped: Catalogue | undefined;

/** The catalogue of the shipped tables, loaded when first asked for. */
export function readCatalogue(): Catalogue {
  shipped ??= loadCatalogue(SHIPPED_TABLES);
  return shipped;
}
