import { ATTRIBUTE_VALUES, type AttributeDefault, type AttributeName } from "../../engine/bicycle.ts";
import type { Catalogue, Defaults } from "../../engine/decision/catalogue.ts";
import type { Caution } from "../../engine/decision/caution.ts";
import type { Check, CheckId, LevelId } from "../../engine/inspection/check.ts";
import type { SellingTables } from "../../engine/selling/demand/sellingTables.ts";
import type { Operation } from "../../engine/service/operation.ts";
import type { Part, PartSize, Tool } from "../../engine/service/part.ts";
import { CURRENCIES } from "../schemas/currency.ts";
import { GROUP_LABELS, LABELS } from "./labels.ts";

/** A word that a field accepts, with what to show for it. */
export interface Choice {
  readonly value: string;
  readonly label: string;
}

/** Everything a form needs. */
export interface Reference {
  /** Hash of the tables' content. */
  readonly version: string;
  readonly demoData: true;
  /** Default currency, ISO 4217. */
  readonly currency: string;
  readonly currencies: readonly string[];
  /** Every attribute of a description with the values it takes, in order. */
  readonly attributes: Readonly<Record<AttributeName, readonly Choice[]>>;
  readonly attributeLabels: Readonly<Record<AttributeName, string>>;
  /** How an attribute left out is settled: the first row of that attribute whose conditions hold. */
  readonly attributeDefaults: readonly AttributeDefault[];
  /** The seven groups of the catalogue. */
  readonly groups: readonly Choice[];
  readonly checks: readonly Check[];
  readonly operations: readonly (Pick<
    Operation,
    "id" | "name" | "skill" | "tools" | "doneBy" | "safetyCritical"
  > & {
    /** Of a test or a query: the levels that stand until its result is answered at their check. */
    readonly settles: readonly { readonly check: CheckId; readonly levels: readonly LevelId[] }[];
  })[];
  readonly parts: readonly (Pick<Part, "id" | "name" | "kind" | "unit"> & {
    readonly sizes: readonly PartSize[];
  })[];
  readonly tools: readonly Tool[];
  readonly cautions: readonly Pick<Caution, "id" | "title" | "text">[];
  readonly defaults: Defaults;
  readonly selling: SellingTables;
}

/** The answer of GET /v1/reference: the tables as a form needs them, with the words to show. */
export function reference({
  version,
  inspection,
  service,
  cautions,
  defaults,
  selling,
}: Catalogue): Reference {
  return {
    version,
    demoData: true,
    currency: defaults.currency,
    currencies: CURRENCIES,
    attributes: forEachAttribute(choices),
    attributeLabels: forEachAttribute((name) => LABELS[name].label),
    attributeDefaults: inspection.attributeDefaults,
    groups: Object.entries(GROUP_LABELS).map(([value, label]) => ({ value, label })),
    checks: inspection.checks,
    operations: service.operations.map(({ id, name, skill, tools, doneBy, safetyCritical, tests }) => {
      const settles = tests.map(({ of, at }) => ({ check: of, levels: at }));
      return { id, name, skill, tools, doneBy, safetyCritical, settles };
    }),
    parts: service.parts.map(({ id, name, kind, unit, sizes = [] }) => ({ id, name, kind, unit, sizes })),
    tools: service.tools,
    cautions: cautions.map(({ id, title, text }) => ({ id, title, text })),
    defaults,
    selling,
  };
}

function forEachAttribute<T>(make: (name: AttributeName) => T): Record<AttributeName, T> {
  const names = Object.keys(ATTRIBUTE_VALUES) as AttributeName[];
  return Object.fromEntries(names.map((name) => [name, make(name)])) as Record<AttributeName, T>;
}

function choices(name: AttributeName): Choice[] {
  const labels: Readonly<Record<string, string>> = LABELS[name].values;
  return ATTRIBUTE_VALUES[name].map((value) => ({ value, label: labels[value] ?? value }));
}
