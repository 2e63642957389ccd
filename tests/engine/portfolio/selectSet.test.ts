import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Candidate } from "../../../worker/engine/portfolio/candidate.ts";
import type { Budgets, Selection } from "../../../worker/engine/portfolio/comparison.ts";
import { selectSet } from "../../../worker/engine/portfolio/selectSet.ts";
import { bestByTrying, CANDIDATES, candidatesOf, SHED, shedOf, UNLIMITED } from "./shed.ts";

const select = (candidates: readonly Candidate[], budgets: Budgets) => selectSet(candidates, budgets, "EUR");

const someFinds = fc.subarray([...CANDIDATES], { minLength: 1, maxLength: 6 });
const anyBudgets: fc.Arbitrary<Budgets> = fc.record({
  hours: fc.option(fc.double({ min: 0, max: 40, noNaN: true })),
  cash: fc.option(fc.double({ min: 0, max: 400, noNaN: true })),
  slots: fc.option(fc.nat(5)),
});

function worthOf(candidates: readonly Candidate[], { chosen }: Selection): number {
  return candidates.reduce((sum, { id, options }) => {
    const course = chosen.find((one) => one.id === id)?.course ?? "leave";
    return sum + options.find((option) => option.course.course === course)!.value;
  }, 0);
}

describe("the set chosen from the worked cases", () => {
  test("is worth as much as the best of all that fit, tried one by one, and is proven so", () => {
    fc.assert(
      fc.property(someFinds, anyBudgets, (candidates, budgets) => {
        const selection = select(candidates, budgets);
        expect(selection.proven).toBe(true);
        expect(selection.gap).toBe(0);
        expect(selection.total!.netBenefit).toBeCloseTo(bestByTrying(candidates, budgets), 7);
        expect(worthOf(candidates, selection)).toBeCloseTo(selection.total!.netBenefit, 7);
      }),
      { numRuns: 300 },
    );
  });

  test("stays within hours, cash and places", () => {
    fc.assert(
      fc.property(someFinds, anyBudgets, (candidates, budgets) => {
        const { total, chosen } = select(candidates, budgets);
        expect(total!.hours).toBeLessThanOrEqual((budgets.hours ?? Infinity) + 1e-6);
        expect(total!.cash).toBeLessThanOrEqual((budgets.cash ?? Infinity) + 1e-6);
        expect(total!.slots).toBeLessThanOrEqual(budgets.slots ?? Infinity);
        expect(total!.slots).toBe(chosen.length);
      }),
    );
  });

  test("without limits gives every find the course that its own appraisal decides for", () => {
    const { chosen, nextIn, shadowPrices, chanceHoursOverrun } = select(CANDIDATES, UNLIMITED);
    for (const { id, options } of CANDIDATES) {
      const alone = options.reduce((best, one) => (one.value > best.value ? one : best)).course.course;
      expect(chosen.find((one) => one.id === id)?.course ?? "leave").toBe(alone);
    }
    expect(nextIn).toBeNull();
    expect(shadowPrices).toEqual({ hour: 0, cash: 0, slot: 0 });
    expect(chanceHoursOverrun).toBe(0);
  });

  test("does not depend on the order of the finds, to the last bit", () => {
    const orders = fc.tuple(someFinds, anyBudgets).chain(([candidates, budgets]) =>
      fc.record({
        candidates: fc.constant(candidates),
        budgets: fc.constant(budgets),
        shuffled: fc.shuffledSubarray(candidates, { minLength: candidates.length }),
      }),
    );
    fc.assert(
      fc.property(orders, ({ candidates, budgets, shuffled }) => {
        expect(select(shuffled, budgets)).toEqual(select(candidates, budgets));
      }),
    );
  });

  test("of two finds alike takes the same one however they are listed", () => {
    const [first] = CANDIDATES;
    const twins = ["b", "a"].map((id) => ({ ...first!, id }));
    const one = { hours: null, cash: null, slots: 1 };
    expect(select(twins, one).chosen).toEqual(select(twins.toReversed(), one).chosen);
  });

  test("with more of a budget is never worth less, by just the shadow price for one more", () => {
    fc.assert(
      fc.property(someFinds, anyBudgets, (candidates, budgets) => {
        const { total, shadowPrices } = select(candidates, budgets);
        const worthWith = (more: Partial<Budgets>) =>
          bestByTrying(candidates, { ...budgets, ...more }) - total!.netBenefit;
        const { hours, cash, slots } = budgets;
        expect(shadowPrices!.hour).toBeGreaterThanOrEqual(0);
        expect(shadowPrices!.cash).toBeGreaterThanOrEqual(0);
        expect(shadowPrices!.slot).toBeGreaterThanOrEqual(0);
        expect(shadowPrices!.hour).toBeCloseTo(hours === null ? 0 : worthWith({ hours: hours + 1 }), 6);
        expect(shadowPrices!.cash).toBeCloseTo(cash === null ? 0 : worthWith({ cash: cash + 1 }), 6);
        expect(shadowPrices!.slot).toBeCloseTo(slots === null ? 0 : worthWith({ slots: slots + 1 }), 6);
      }),
      { numRuns: 150 },
    );
  });

  test("names as next a find left out that fits and pays once what it needs is there", () => {
    let named = 0;
    fc.assert(
      fc.property(someFinds, anyBudgets, (candidates, budgets) => {
        const { nextIn, total, chosen } = select(candidates, budgets);
        if (nextIn === null) return;
        named++;
        expect(chosen.map(({ id }) => id)).not.toContain(nextIn.id);
        const { options } = candidates.find(({ id }) => id === nextIn.id)!;
        const worth = (course: string) => options.find((one) => one.course.course === course)!.value;
        const { hours, cash, slots } = nextIn.needs;
        expect(hours + cash + slots).toBeGreaterThan(0);
        const raised = {
          hours: budgets.hours && budgets.hours + hours + 1e-9,
          cash: budgets.cash && budgets.cash + cash + 1e-9,
          slots: budgets.slots === null ? null : budgets.slots + slots,
        };
        if (budgets.hours === 0) raised.hours = hours + 1e-9;
        if (budgets.cash === 0) raised.cash = cash + 1e-9;
        const gain = worth(nextIn.course) - worth("leave");
        expect(gain).toBeGreaterThan(0);
        expect(bestByTrying(candidates, raised)).toBeGreaterThanOrEqual(total!.netBenefit + gain - 1e-6);
      }),
    );
    expect(named).toBeGreaterThan(20);
  });

  test("leaves everything where there is no room, and says which find would come in first", () => {
    const { chosen, total, nextIn } = select(CANDIDATES, { hours: 0, cash: 0, slots: 0 });
    expect(chosen).toEqual([]);
    expect(total).toMatchObject({ hours: 0, cash: 0, slots: 0, hoursP90: 0 });
    expect(nextIn!.needs.slots).toBe(1);
  });

  test("never holds a course beside which another of the find is worth no less and uses no more", () => {
    fc.assert(
      fc.property(someFinds, anyBudgets, (candidates, budgets) => {
        for (const { id, course } of select(candidates, budgets).chosen) {
          const { options } = candidates.find((one) => one.id === id)!;
          const taken = options.find((one) => one.course.course === course)!;
          for (const other of options) {
            const less = other.use.every((use, budget) => use <= taken.use[budget]!);
            if (less) expect(other.value).toBeLessThanOrEqual(taken.value);
          }
        }
      }),
    );
  });

  test("is told in the order of margin per hour, each find once", () => {
    const { meritOrder, chosen } = select(CANDIDATES, { hours: 12, cash: 150, slots: 3 });
    const rates = meritOrder.map(({ marginPerHour }) => marginPerHour);
    expect(rates).toEqual(rates.toSorted((a, b) => b - a));
    expect(new Set(meritOrder.map(({ id }) => id)).size).toBe(meritOrder.length);
    expect(meritOrder.flatMap(({ chosen: taken, id, course }) => (taken ? [{ id, course }] : []))).toEqual(
      chosen,
    );
  });
});

describe("a choice that is too much alike to be proven in time", () => {
  const budgets = { hours: 300, cash: 3000, slots: 67 };

  test("tells the best found and by how much another could be better, never silence", () => {
    const selection = select(candidatesOf(shedOf(200)), budgets);
    expect(selection.proven).toBe(false);
    expect(selection.gap).toBeGreaterThan(0);
    // A set of 200 finds that is worth thousands, known to a few units of money.
    expect(selection.gap).toBeLessThan(0.005 * selection.total!.netBenefit);
    expect(selection.total!.slots).toBeLessThanOrEqual(67);
    expect(Math.min(...Object.values(selection.shadowPrices!))).toBeGreaterThanOrEqual(0);
  });
});

describe("a course taken in any case", () => {
  const lock = (id: string, course: "restore" | "make-safe" | "break-for-parts" | "leave") =>
    candidatesOf(SHED.map((find) => (find.id === id ? { ...find, course } : find)));
  const open = CANDIDATES.find(({ options }) => options.some(({ course }) => course.course === "restore"))!;

  test("is taken, and the others give way", () => {
    const { chosen, total } = select(lock(open.id, "restore"), { hours: 20, cash: 300, slots: 2 });
    expect(chosen).toContainEqual({ id: open.id, course: "restore" });
    const free = select(CANDIDATES, { hours: 20, cash: 300, slots: 2 });
    expect(total!.netBenefit).toBeLessThanOrEqual(free.total!.netBenefit + 1e-9);
  });

  test("may be leaving it", () => {
    const { chosen } = select(lock(open.id, "leave"), UNLIMITED);
    expect(chosen.map(({ id }) => id)).not.toContain(open.id);
  });

  test("that does not fit is told with what is short and whom to set free, and no set is made up", () => {
    const selection = select(lock(open.id, "restore"), { hours: 1, cash: 0, slots: 0 });
    expect(selection).toMatchObject({
      chosen: [],
      total: null,
      shadowPrices: null,
      chanceHoursOverrun: null,
    });
    expect(selection.overruns.map(({ budget }) => budget)).toEqual(["hours", "cash", "slots"]);
    for (const { given, needs, short, freeing, explanation } of selection.overruns) {
      expect(short).toBeCloseTo(needs - given, 9);
      expect(freeing).toEqual([open.id]);
      expect(explanation).toMatch(
        /^The courses taken in any case need .+, and there are .+: set it free, or allow .+ more\.$/,
      );
    }
  });

  test("one of several that do not fit: told who alone would free the room, or that one is not enough", () => {
    const ids = CANDIDATES.filter(({ options }) =>
      options.some(({ course }) => course.course === "make-safe"),
    )
      .slice(0, 3)
      .map(({ id }) => id);
    const locked = candidatesOf(
      SHED.filter(({ id }) => ids.includes(id)).map((find) => ({ ...find, course: "make-safe" as const })),
    );
    const slots = (given: number) => select(locked, { ...UNLIMITED, slots: given }).overruns[0]!;
    expect(slots(2).freeing.toSorted()).toEqual(ids.toSorted());
    expect(slots(2).explanation).toContain("set one of them free, or allow 1 place more");
    expect(slots(1).freeing).toEqual([]);
    expect(slots(1).explanation).toContain("set more than one of them free, or allow 2 places more");
  });

  test("that is closed to the bike is refused with the reason, at its own field", () => {
    const courses = ["restore", "make-safe", "sell-as-found", "break-for-parts"] as const;
    const refusals = SHED.flatMap((find) => courses.map((course) => ({ ...find, course }))).flatMap(
      (find) => {
        try {
          candidatesOf([find]);
          return [];
        } catch (error) {
          return [error];
        }
      },
    );
    expect(refusals.length).toBeGreaterThan(0);
    for (const refusal of refusals) expect(refusal).toMatchObject({ pointer: "/course", argument: "course" });
  });
});
