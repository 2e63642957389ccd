import { ATTRIBUTE_VALUES, ERAS, KEPT } from "../../worker/engine/bicycle.ts";
import { appliesTo } from "../../worker/engine/inspection/applicability.ts";
import { settleAttributes } from "../../worker/engine/inspection/attributeDefaults.ts";
import { inspect } from "../../worker/engine/inspection/inspect.ts";
import type { InspectionIndex } from "../../worker/engine/inspection/inspectionIndex.ts";
import { geometricMean, odds } from "./impliedOdds.ts";

/** What an inspection whose triage found nothing leaves of the odds of a fault elsewhere. */
export interface Left {
  readonly check: string;
  readonly level: string;
  /** Odds after over odds before, averaged as logarithms over all kinds of bike, eras and ways of being kept. */
  readonly average: number;
  /** The same on the bike where least is left. */
  readonly least: number;
}

/** Every fault of the checks outside the triage, the one of which least is left first. */
export function leftAfterGoodTriage(index: InspectionIndex): Left[] {
  const factors = new Map<string, { check: string; level: string; values: number[] }>();
  for (const bike of bikes(index)) {
    const triage = index.checks
      .map(({ check }) => check)
      .filter((check) => check.priority === "triage" && appliesTo(check, bike))
      .map(({ id, levels }) => [id, { level: levels[0]!.id }]);
    for (const { check, acquittedBy, probabilities, prior } of inspect(
      bike,
      {},
      Object.fromEntries(triage),
      index,
    ).unseen) {
      if (acquittedBy !== null || !index.history.shifts.has(check)) continue;
      const { levels } = index.byId.get(check)!.check;
      for (let rank = 1; rank < levels.length; rank++) {
        const level = levels[rank]!.id;
        const row = factors.get(`${check}:${level}`) ?? { check, level, values: [] };
        row.values.push(odds(beyond(probabilities, rank)) / odds(beyond(prior, rank)));
        factors.set(`${check}:${level}`, row);
      }
    }
  }
  return [...factors.values()]
    .map(({ values, ...of }) => ({ ...of, average: geometricMean(values), least: Math.min(...values) }))
    .sort((a, b) => a.average - b.average);
}

function beyond(chances: readonly number[], rank: number): number {
  return chances.slice(rank).reduce((a, b) => a + b, 0);
}

/** A steel bike of the middle tier of every kind, era and way of being kept. */
function bikes({ attributeDefaults }: InspectionIndex) {
  return ATTRIBUTE_VALUES.category
    .filter((category) => category !== "e-bike-out-of-scope")
    .flatMap((category) =>
      ERAS.flatMap((era) =>
        KEPT.map((kept) =>
          settleAttributes(
            { category, era, kept, frameMaterial: "steel", componentTier: "mid" },
            attributeDefaults,
          ),
        ),
      ),
    );
}
