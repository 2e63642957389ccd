import { describe, expect, test } from "vitest";
import { Ledger, type Work } from "../../../worker/engine/service/ledger.ts";
import { type Found, lookedOver, situationFor } from "../decision/lookedOver.ts";
import { BOOK } from "../decision/shippedBook.ts";

const operationOf = (id: string) => BOOK.service.operations.get(id)!;
const ledgerOf = (found: Found = {}, orders = 1) => new Ledger(situationFor(lookedOver(found)).bench, orders);
const kinds = (ledger: Ledger, { resources }: Work) =>
  resources.map((index) => ledger.resources[index]!.kind);
const stepIds = ({ steps }: Work) => steps.map(({ id }) => id).sort();

describe("the ledger", () => {
  test("gives an operation the same resources however often it is asked", () => {
    const ledger = ledgerOf();
    const first = ledger.forOperation(operationOf("new-tyres"), "rear");
    const count = ledger.resources.length;
    expect(ledger.forOperation(operationOf("new-tyres"), "rear")).toEqual(first);
    expect(ledger.resources).toHaveLength(count);
  });

  test("gives two operations the same step, and each its own task", () => {
    const ledger = ledgerOf();
    const tyres = ledger.forOperation(operationOf("new-tyres"), "rear").resources;
    const truing = ledger.forOperation(operationOf("true-wheel"), "rear").resources;
    const shared = tyres.filter((index) => truing.includes(index));
    expect(shared.map((index) => ledger.resources[index]!.step?.id).sort()).toEqual([
      "rear-wheel-out",
      "tyre-rear-off",
    ]);
  });

  test("takes a step with all that it implies, of its own wheel only, and only where the bike has it", () => {
    const ledger = ledgerOf();
    expect(stepIds(ledger.forOperation(operationOf("true-wheel"), "front"))).toEqual([
      "front-wheel-out",
      "tyre-front-off",
    ]);
    // The fork comes out with wheel, brake and stem.
    expect(stepIds(ledger.forOperation(operationOf("replace-headset"), "bike"))).toEqual([
      "fork-out",
      "front-brake-off",
      "front-wheel-out",
      "stem-bar-out",
    ]);
    const taped = (barType: "drop" | "flat") =>
      stepIds(ledgerOf({ bike: { barType } }).forOperation(operationOf("replace-stem"), "bike"));
    expect(taped("drop")).toContain("bar-tape-off");
    expect(taped("flat")).not.toContain("bar-tape-off");
  });

  test("has one delivery for all that order a part, at the course's count, and none for doses from the shelf", () => {
    const ledger = ledgerOf({}, 2);
    const tyres = ledger.forOperation(operationOf("new-tyres"), "rear");
    const chain = ledger.forOperation(operationOf("new-chain"), "bike");
    const [delivery] = tyres.resources.filter((index) => ledger.resources[index]!.kind === "orders");
    expect(chain.resources).toContain(delivery);
    expect(kinds(ledger, ledger.forOperation(operationOf("wash"), "bike"))).toEqual(["task"]);
    const { low, typical, high } = BOOK.catalogue.defaults.delivery.perOrder;
    const one = { mean: (low + 4 * typical + high) / 6, variance: ((high - low) / 6) ** 2 };
    // Independent deliveries: variances add, they do not multiply.
    expect(ledger.resources[delivery!]!.money.mean).toBeCloseTo(2 * one.mean, 9);
    expect(ledger.resources[delivery!]!.money.variance).toBeCloseTo(2 * one.variance, 9);
  });

  test("for another course changes the count of deliveries and nothing else", () => {
    const ledger = ledgerOf({}, 1);
    const work = ledger.forOperation(operationOf("new-tyres"), "rear");
    const before = [...ledger.resources];
    ledger.withOrders(2.5);
    const changed = ledger.resources.filter((resource, index) => resource !== before[index]);
    expect(changed.map(({ kind }) => kind)).toEqual(["orders"]);
    expect(ledger.forOperation(operationOf("new-tyres"), "rear")).toEqual(work);
  });

  test("adds a tool only where it is not at hand, once for all that want it", () => {
    const has = (tools: readonly string[] | undefined) => {
      const ledger = ledgerOf({ workshop: { tools } });
      return kinds(ledger, ledger.forOperation(operationOf("true-wheel"), "rear")).filter(
        (kind) => kind === "tool",
      ).length;
    };
    const { tools } = operationOf("true-wheel");
    expect([has(undefined), has(tools), has([tools[0]!]), has([])]).toEqual([
      0,
      0,
      tools.length - 1,
      tools.length,
    ]);
  });

  test("adds a second pair of eyes to safety-critical work beyond the skill, and not to other work", () => {
    const supervised = (id: string, skill: 1 | 4) => {
      const ledger = ledgerOf({ workshop: { skill } });
      const { resources } = ledger.forOperation(operationOf(id), "bike");
      return resources.some((index) => ledger.resources[index]!.task?.operation.id === "paid-safety-check");
    };
    expect([supervised("replace-headset", 1), supervised("replace-headset", 4)]).toEqual([true, false]);
    // Asks for skill 2, and nobody falls for it.
    expect(operationOf("touch-up")).toMatchObject({ skill: 2, safetyCritical: false });
    expect(supervised("touch-up", 1)).toBe(false);
  });
});
