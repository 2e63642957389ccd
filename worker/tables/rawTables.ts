/** The files of data/ that the engine reads, as JSON says them: nothing is known of their content yet. */
export interface RawTables {
  readonly checks: unknown;
  readonly priors: unknown;
  readonly priorModifiers: unknown;
  readonly acquittals: unknown;
  readonly history: unknown;
  readonly evidenceRules: unknown;
  readonly attributeDefaults: unknown;
  readonly tyreMarkings: unknown;
  readonly steps: unknown;
  readonly operations: unknown;
  readonly remedies: unknown;
  readonly parts: unknown;
  readonly tools: unknown;
  readonly cautions: unknown;
  readonly defaults: unknown;
  readonly partsValue: unknown;
  readonly valueModel: unknown;
  readonly valuePrior: unknown;
  readonly selling: unknown;
}

/** Name of each table's file under data/. */
export const FILES: Readonly<Record<keyof RawTables, string>> = {
  checks: "checks.json",
  priors: "priors.json",
  priorModifiers: "prior-modifiers.json",
  acquittals: "acquittals.json",
  history: "history.json",
  evidenceRules: "evidence-rules.json",
  attributeDefaults: "attribute-defaults.json",
  tyreMarkings: "tyre-markings.json",
  steps: "steps.json",
  operations: "operations.json",
  remedies: "remedies.json",
  parts: "parts.json",
  tools: "tools.json",
  cautions: "cautions.json",
  defaults: "defaults.json",
  partsValue: "parts-value.json",
  valueModel: "value-model.json",
  valuePrior: "value-prior.json",
  selling: "selling.json",
};
