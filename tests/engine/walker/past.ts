import type { Check } from "../../../worker/engine/inspection/check.ts";
import { fits, type Given, type Seen } from "./given.ts";

const FACTORS = ["weather", "mileage", "neglect", "crash"] as const;
export const CLASSES = 16;

/** A check that nobody looked at, as chances of its levels in each class of past. */
export interface Hidden {
  readonly check: Check;
  /** The wheel not looked at where the other one was. */
  readonly wheel: "front" | "rear" | null;
  /** Chance of level k in class z, by class. */
  readonly chances: readonly (readonly number[])[];
  /** Chances of the levels, the classes averaged with what was seen. */
  readonly overall: readonly number[];
}

export interface Past {
  /** Chance of each class after all that was seen. */
  readonly classes: readonly number[];
  readonly hidden: readonly Hidden[];
}

/** The past of a bike by enumeration of its 16 classes: chances of the classes given what was seen, and of what was not. */
export function pastOf(given: Given): Past {
  const { tables, attributes } = given;
  const before = Array.from({ length: CLASSES }, (_, z) =>
    tables.inspection.history.factors.reduce((product, { chance }, f) => {
      const happened = chance[attributes.kept];
      return product * ((z >> f) % 2 === 1 ? happened : 1 - happened);
    }, 1),
  );
  const chancesOf = (check: Check) => levelsByClass(check, before, given);
  const classes = [...before];
  for (const { check, rank } of speaking(given)) {
    const chances = chancesOf(checkOf(given, check));
    if (chances.some((levels) => levels[rank]! > 0))
      for (let z = 0; z < CLASSES; z++) classes[z]! *= chances[z]![rank]!;
  }
  const total = classes.reduce((sum, one) => sum + one, 0);
  for (let z = 0; z < CLASSES; z++) classes[z]! /= total;
  const hidden = unlooked(given).map(({ check, wheel }) => {
    const chances = chancesOf(check);
    const overall = check.levels.map((_, rank) =>
      classes.reduce((sum, weight, z) => sum + weight * chances[z]![rank]!, 0),
    );
    return { check, wheel, chances, overall };
  });
  return { classes, hidden };
}

function checkOf({ tables }: Given, id: string): Check {
  return tables.inspection.checks.find((check) => check.id === id)!;
}

/** Chances of the levels in each class, the average over the classes being the table's with its modifiers; the cuts found by bisection. */
function levelsByClass(check: Check, before: readonly number[], { tables, attributes }: Given): number[][] {
  const { priors, priorModifiers, history } = tables.inspection;
  const row = priors.find(
    (one) => one.check === check.id && one.era === attributes.era && one.kept === attributes.kept,
  )!;
  const raised = row.probabilities.map((chance, rank) =>
    priorModifiers
      .filter(({ check: id, when }) => id === check.id && fits(when, attributes))
      .filter(({ fromLevel }) => rank >= check.levels.findIndex(({ id }) => id === fromLevel))
      .reduce((product, { odds }) => product * odds, chance),
  );
  const sum = raised.reduce((total, one) => total + one, 0);
  const prior = raised.map((one) => one / sum);
  const loading = history.loadings.find((one) => one.check === check.id);
  const shifts = before.map((_, z) =>
    FACTORS.reduce((total, id, f) => total + ((z >> f) % 2) * history.scale * (loading?.[id] ?? 0), 0),
  );
  const worse = (from: number) => prior.slice(from).reduce((total, one) => total + one, 0);
  const tails = prior.map((_, rank) =>
    rank === 0 ? before.map(() => 1) : tailByClass(worse(check.ordered ? rank : 1), before, shifts),
  );
  return before.map((_, z) =>
    prior.map((chance, rank) => {
      if (check.ordered) return tails[rank]![z]! - (tails[rank + 1]?.[z] ?? 0);
      if (rank === 0) return 1 - (tails[1]?.[z] ?? 0);
      return worse(1) > 0 ? (tails[1]![z]! * chance) / worse(1) : 0;
    }),
  );
}

/** The logistic of cut + shift in each class, the cut such that the average is the tail. */
function tailByClass(tail: number, before: readonly number[], shifts: readonly number[]): number[] {
  if (tail <= 0 || tail >= 1) return before.map(() => Math.min(1, Math.max(0, tail)));
  const at = (cut: number) => shifts.map((shift) => 1 / (1 + Math.exp(-cut - shift)));
  let [low, high] = [-60, 60];
  for (let halving = 0; halving < 100; halving++) {
    const middle = (low + high) / 2;
    const average = at(middle).reduce((sum, one, z) => sum + before[z]! * one, 0);
    if (average < tail) low = middle;
    else high = middle;
  }
  return at((low + high) / 2);
}

/** One level a check that speaks of the past: the worse wheel's; not a symptom whose cause was seen and speaks for it; not a paper. */
function speaking(given: Given): Seen[] {
  const { seen, tables, attributes } = given;
  const loaded = new Set(tables.inspection.history.loadings.map(({ check }) => check));
  const worst = seen.filter(
    (one) =>
      loaded.has(one.check) &&
      !seen.some(
        (other) =>
          other.check === one.check &&
          (other.rank > one.rank || (other.rank === one.rank && seen.indexOf(other) < seen.indexOf(one))),
      ),
  );
  return worst.filter(({ check, level }) => {
    const causes = tables.inspection.symptoms
      .filter((row) => row.check === check && row.level === level && fits(row.when, attributes))
      .flatMap((row) => row.causes);
    return !causes.some(
      (cause) =>
        loaded.has(cause.check) &&
        seen.some((one) => one.check === cause.check && cause.levels.includes(one.level)),
    );
  });
}

/** Checks that apply, were not looked at on the whole bike, and that nothing clears. */
function unlooked(given: Given): Pick<Hidden, "check" | "wheel">[] {
  const { tables, attributes, seen } = given;
  const onWhole = (sightings: readonly Seen[]) =>
    sightings.length > 1 || sightings.some(({ position }) => position === "bike" || position === "both");
  return tables.inspection.checks.flatMap((check) => {
    const own = seen.filter((one) => one.check === check.id);
    if (onWhole(own) || !fits(check.appliesTo, attributes)) return [];
    const cleared = tables.inspection.acquittals.some(({ check: by, level, acquits, when }) => {
      if (!acquits.includes(check.id) || !fits(when, attributes)) return false;
      if (by === null) return true;
      const sightings = seen.filter((one) => one.check === by);
      return onWhole(sightings) && sightings.every((one) => one.level === level);
    });
    if (cleared || (check.group === "paperwork" && check.id !== "equipment")) return [];
    const wheel = own.length === 0 ? null : own[0]!.position === "front" ? "rear" : "front";
    return [{ check, wheel }];
  });
}
