import { DomainError } from "../domainError.ts";
import { initialBelief, type ValueBelief } from "./valueBelief.ts";
import { type ValueLayout, valueLayout } from "./valueLayout.ts";
import type { FittedModel, ValuePrior } from "./valueTables.ts";

/** The fitted regression made ready for learning and predicting: plain data, built once and passed in by whoever holds it. */
export interface ValueModel {
  readonly layout: ValueLayout;
  readonly prior: ValuePrior;
  /** What is believed before any sale of one's own. */
  readonly initial: ValueBelief;
}

/**
 * Makes a fitted regression ready. Takes about ten milliseconds: once at start, not once a request.
 * @throws DomainError where the columns are not those of the design, or R has the wrong size
 */
export function compileModel(fitted: FittedModel, prior: ValuePrior): ValueModel {
  const layout = valueLayout(fitted.design);
  const { start, size } = layout.demo;
  const names = layout.names.slice(start, start + size);
  const odd = names.findIndex((name, index) => fitted.columns[index]?.name !== name);
  if (odd >= 0 || fitted.columns.length !== size) {
    const at = odd >= 0 ? odd : size;
    const requirement = `${odd >= 0 ? names[at] : `${size} columns`}: run npm run data`;
    throw new DomainError("inconsistent-table", `columns[${at}]`, fitted.columns[at]?.name, requirement);
  }
  const entries = fitted.squareRootInformation;
  if (entries.length !== (size * (size + 1)) / 2) {
    const requirement = `${(size * (size + 1)) / 2} entries: run npm run data`;
    throw new DomainError("inconsistent-table", "squareRootInformation", entries.length, requirement);
  }
  return { layout, prior, initial: initialBelief(layout, fitted, prior) };
}
