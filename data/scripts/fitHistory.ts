import { compileInspection } from "../../worker/engine/inspection/compileInspection.ts";
import { FACTORS } from "../../worker/engine/inspection/history/factor.ts";
import type { Loading } from "../../worker/engine/inspection/history/historyTable.ts";
import type { InspectionIndex } from "../../worker/engine/inspection/inspectionIndex.ts";
import type { InspectionTables } from "../../worker/engine/inspection/inspectionTables.ts";
import type { EvidenceRule, EvidenceRules } from "../../worker/tables/evidenceRuleSchema.ts";
import { type Left, leftAfterGoodTriage } from "./goodTriage.ts";
import { geometricMean, impliedOdds } from "./impliedOdds.ts";

/** Scales tried. Steps of a half: rules that are invented to one digit do not carry a finer one. */
const SCALES = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5];

/** A rule beside what the history makes of it. */
export interface RuleFit {
  readonly rule: EvidenceRule;
  /** Averaged as logarithms over eras and ways of being kept. */
  readonly implied: number;
  readonly least: number;
  readonly most: number;
  /** Both checks have degrees. The rules on kinds are told apart: the history moves all their faults alike. */
  readonly degrees: boolean;
  /** Factors that load on both checks. */
  readonly shared: readonly string[];
}

/** The history at one scale. */
export interface ScaleFit {
  readonly scale: number;
  readonly rules: readonly RuleFit[];
  /** Root mean square of log (implied / asked) over the rules on degrees. */
  readonly error: number;
  /** Of what a triage without a fault leaves least. */
  readonly left: Left;
  /** Neither a rule's pair in any era and keeping nor what is left on the average is beyond the caps. */
  readonly withinCaps: boolean;
}

/** The history at every scale tried. */
export function historyFits(tables: InspectionTables, rules: EvidenceRules): readonly ScaleFit[] {
  return SCALES.map((scale) => fitAt(scale, tables, rules));
}

/** The scale of the least error among those within the caps. */
export function fittedScale(fits: readonly ScaleFit[]): ScaleFit {
  const allowed = fits.filter(({ withinCaps }) => withinCaps);
  if (allowed.length === 0)
    throw new Error("no scale keeps the history within the caps of evidence-rules.json");
  return leastError(allowed);
}

export function leastError(fits: readonly ScaleFit[]): ScaleFit {
  return fits.reduce((best, one) => (one.error < best.error ? one : best));
}

function fitAt(scale: number, tables: InspectionTables, { caps, rules }: EvidenceRules): ScaleFit {
  const index = compileInspection({ ...tables, history: { ...tables.history, scale } });
  const fits = rules.map((rule) => ruleFit(rule, index, tables.history.loadings));
  const logErrors = fits
    .filter(({ degrees }) => degrees)
    .map(({ rule, implied }) => Math.log(implied / rule.odds));
  const left = leftAfterGoodTriage(index)[0]!;
  return {
    scale,
    rules: fits,
    error: Math.sqrt(logErrors.reduce((sum, one) => sum + one ** 2, 0) / logErrors.length),
    left,
    withinCaps:
      left.average >= caps.least && fits.every(({ least, most }) => least >= caps.least && most <= caps.most),
  };
}

function ruleFit(rule: EvidenceRule, index: InspectionIndex, loadings: readonly Loading[]): RuleFit {
  const implied = impliedOdds(rule, index);
  const [seen, unseen] = [rule.seen.check, rule.unseen.check].map((check) =>
    loadings.find((row) => row.check === check),
  );
  return {
    rule,
    implied: geometricMean(implied),
    least: Math.min(...implied),
    most: Math.max(...implied),
    degrees: [rule.seen.check, rule.unseen.check].every((check) => index.byId.get(check)!.check.ordered),
    shared: FACTORS.filter((factor) => seen?.[factor] !== undefined && unseen?.[factor] !== undefined),
  };
}
