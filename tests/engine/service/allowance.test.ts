import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inspectSettled } from "../../../worker/engine/decision/inspectSettled.ts";
import { settleRequest } from "../../../worker/engine/decision/settledRequest.ts";
import { situationOf } from "../../../worker/engine/decision/situation.ts";
import { weighRideable } from "../../../worker/engine/decision/weighRideable.ts";
import type { Check } from "../../../worker/engine/inspection/check.ts";
import type { UnseenCheck } from "../../../worker/engine/inspection/finding.ts";
import { sameInEveryClass } from "../../../worker/engine/inspection/history/classChances.ts";
import { allowanceFor } from "../../../worker/engine/service/allowance.ts";
import { curesOf } from "../../../worker/engine/service/cure.ts";
import { type Fault, needOf } from "../../../worker/engine/service/fault.ts";
import type { Ledger } from "../../../worker/engine/service/ledger.ts";
import type { WorkPlan } from "../../../worker/engine/service/workPlan.ts";
import { type Found, lookedOver, situationFor } from "../decision/lookedOver.ts";
import { BOOK } from "../decision/shippedBook.ts";

/** What a level of an unseen check brings, worked out here beside the engine. */
interface Brings {
  readonly resources: readonly number[];
  readonly told: number;
  readonly lost: number;
  readonly changed: number;
}

interface Setting {
  readonly plan: WorkPlan;
  readonly ledger: Ledger;
  readonly goal: number;
  readonly toldLoss: (penalty: number) => number;
  readonly changeAbove: number;
  readonly frameLoss: number;
}

const NONE: Brings = { resources: [], told: 0, lost: 0, changed: 0 };

function brings(check: Check, rank: number, setting: Setting): Brings {
  const { plan, ledger, goal, toldLoss, changeAbove, frameLoss } = setting;
  const level = check.levels[rank]!;
  if (level.terminal === "parts-or-recycle" || level.terminal === "recycle") return { ...NONE, lost: 1 };
  if (rank === 0) return NONE;
  const need = needOf(check, rank, level.safety, ledger.bench.rearSprockets);
  if (need.need === "optional") return NONE;
  const position = check.perWheel ? ("rear" as const) : ("bike" as const);
  const fault: Fault = {
    check,
    position,
    level,
    rank,
    safety: level.safety,
    ...need,
    penalty: level.conditionPenalty,
    assumed: true,
  };
  const ways = curesOf(fault, ledger).map(({ resources }) => {
    const extra = resources.filter((index) => !plan.resources.has(index));
    const work = extra.reduce((sum, index) => sum + worth(index, ledger, goal), 0);
    const survives = extra.reduce((all, index) => all * (1 - ledger.resources[index]!.endsFrame), 1);
    return { extra, survives, worth: work + (1 - survives) * frameLoss };
  });
  const cheapest = ways.sort((a, b) => a.worth - b.worth)[0];
  const told = need.mayDisclose ? toldLoss(level.conditionPenalty) : Infinity;
  if (told < (cheapest?.worth ?? Infinity)) return { ...NONE, told };
  if (!cheapest) return need.need === "required" ? { ...NONE, lost: 1 } : NONE;
  if (cheapest.worth > changeAbove) return { ...NONE, changed: 1 };
  return { resources: cheapest.extra, told: 0, lost: 1 - cheapest.survives, changed: 0 };
}

function worth(index: number, ledger: Ledger, goal: number): number {
  return money(index, ledger) + (minutes(index, ledger) * goal) / 60;
}
function money(index: number, ledger: Ledger): number {
  const { money: own, contingency } = ledger.resources[index]!;
  return own.mean + contingency.money.mean;
}
function minutes(index: number, ledger: Ledger): number {
  const { minutes: own, contingency } = ledger.resources[index]!;
  return own.mean + contingency.minutes.mean;
}

/** Expectation over every joint outcome of the unseen checks: the union of their work, once. */
function enumerated(unseen: readonly UnseenCheck[], setting: Setting) {
  const total = { money: 0, minutes: 0, sound: 0 };
  const visit = (place: number, chance: number, outcome: readonly Brings[]): void => {
    const one = unseen[place];
    if (!one) {
      const union = [...new Set(outcome.flatMap(({ resources }) => resources))];
      const told = outcome.reduce((sum, { told: loss }) => sum + loss, 0);
      total.money += chance * (told + union.reduce((sum, index) => sum + money(index, setting.ledger), 0));
      total.minutes += chance * union.reduce((sum, index) => sum + minutes(index, setting.ledger), 0);
      total.sound +=
        chance * outcome.reduce((sound, { lost, changed }) => sound * (1 - lost) * (1 - changed), 1);
      return;
    }
    const { check } = BOOK.inspection.byId.get(one.check)!;
    for (const [rank, p] of one.probabilities.entries())
      visit(place + 1, chance * p, [...outcome, brings(check, rank, setting)]);
  };
  visit(0, 1, []);
  return total;
}

function setting(found: Found, changeAbove: number): Setting {
  const situation = situationFor(lookedOver(found));
  const weighed = weighRideable("restore", situation);
  if (!weighed.open) throw new Error(weighed.because);
  const goal = found.workshop?.hourlyGoal ?? 8;
  return {
    plan: weighed.plan,
    ledger: situation.ledger.withOrders(2.5),
    goal,
    toldLoss: (penalty) => 150 * penalty,
    changeAbove,
    frameLoss: 200,
  };
}

/** Chances of a check's levels, from weights. */
function chances(id: string, weights: readonly number[]): UnseenCheck {
  const { levels } = BOOK.inspection.byId.get(id)!.check;
  const used = levels.map((_, index) => weights[index]! + (index === 0 ? 0.2 : 0));
  const sum = used.reduce((a, b) => a + b, 0);
  const probabilities = used.map((weight) => weight / sum);
  const byClass = sameInEveryClass(probabilities);
  return { check: id, probabilities, prior: probabilities, byClass, acquittedBy: null };
}

// They share wheels, tyres, cables and cranks; symptoms are left out, since their causes stand for them.
const CHECKS = [
  "hub-bearings",
  "rim-lateral",
  "tyre-condition",
  "spokes-broken",
  "bb-bearing",
  "cranks",
  "chain",
  "inner-cable",
  "housing",
  "headset",
  "seatpost-free",
  "frame-cracks",
  "rust",
  "fork-steerer",
];

describe("the allowance for what was not looked at", () => {
  const weights = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 5, maxLength: 5 });

  test.each([
    ["with no end to what is worth doing", Infinity],
    ["where dear work changes the course", 60],
  ])(
    "equals the expectation over the joint outcomes of four checks, shared work once: %s",
    (_, changeAbove) => {
      const bikes: Found[] = [
        { bike: { componentTier: "upper" } },
        { bike: { componentTier: "entry", kept: "outdoors" }, found: { "tyre-condition": "perished" } },
      ];
      const settings = bikes.map((bike) => setting(bike, changeAbove));
      fc.assert(
        fc.property(
          fc.constantFrom(...settings),
          fc.subarray(CHECKS, { minLength: 3, maxLength: 4 }),
          fc.array(weights, { minLength: 4, maxLength: 4 }),
          (one, ids, drawn) => {
            const unseen = ids.map((id, index) => chances(id, drawn[index]!));
            const allowance = allowanceFor(one.plan, unseen, BOOK.checks, one.ledger, one);
            const expected = enumerated(unseen, one);
            expect(allowance.money.mean).toBeCloseTo(expected.money, 9);
            expect(allowance.minutes.mean).toBeCloseTo(expected.minutes, 9);
            // Within a check, losing and changing exclude each other; only the fractional risk of work may meet a change.
            expect(1 - allowance.condemned - allowance.changed).toBeCloseTo(expected.sound, 9);
          },
        ),
        { seed: 20261125, numRuns: 150 },
      );
    },
  );

  test("is nothing where all was seen, and nothing for papers or what another finding clears", () => {
    const one = setting({}, Infinity);
    const nothing = {
      money: { mean: 0, variance: 0 },
      minutes: { mean: 0, variance: 0 },
      condemned: 0,
      changed: 0,
    };
    expect(allowanceFor(one.plan, [], BOOK.checks, one.ledger, one)).toEqual(nothing);
    const cleared = [{ ...chances("chain", [0, 0, 0, 1, 0]), acquittedBy: "brake-function" }];
    expect(allowanceFor(one.plan, cleared, BOOK.checks, one.ledger, one)).toEqual(nothing);
    const papers = [chances("serial", [0, 1, 1, 1, 1]), chances("ownership", [0, 0, 0, 1, 1])];
    expect(allowanceFor(one.plan, papers, BOOK.checks, one.ledger, one)).toEqual(nothing);
  });

  test("is negative where a fault that is assumed may be absent, and no more than its own work", () => {
    const found: Found = {
      bike: { componentTier: "upper", kept: "outdoors", era: "1970s" },
      unseen: ["tyre-condition"],
    };
    // With the chances from before anything was seen: where all else is sound, so are the tyres likelier than not.
    const settled = settleRequest(lookedOver(found), BOOK);
    const inspection = inspectSettled(settled, BOOK);
    const before = inspection.unseen.map((one) => ({
      ...one,
      probabilities: one.prior,
      byClass: sameInEveryClass(one.prior),
    }));
    const situation = situationOf(settled, { ...inspection, unseen: before }, BOOK);
    const weighed = weighRideable("make-safe", situation);
    if (!weighed.open) throw new Error(weighed.because);
    const tyres = weighed.plan.tasks.find(({ operation }) => operation.id === "new-tyres")!;
    const assumed = tyres.because[0]!;
    expect(tyres.because).toHaveLength(1);
    expect(assumed.assumed).toBe(true);
    const [unseen] = situation.inspection.unseen;
    const absent = unseen!.probabilities.slice(0, assumed.rank).reduce((a, b) => a + b, 0);
    const price = tyres.purchases.reduce(
      (sum, { quantity, unitPrice }) => sum + quantity * unitPrice.mean,
      0,
    );
    expect(weighed.allowance.money.mean).toBeCloseTo(-absent * price, 9);
    expect(weighed.allowance.minutes.mean).toBeCloseTo(-absent * tyres.minutes.mean, 9);
  });
});
