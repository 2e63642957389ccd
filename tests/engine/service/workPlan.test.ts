import { describe, expect, test } from "vitest";
import { reportPlan } from "../../../worker/engine/decision/reportedPlan.ts";
import { settleRequest } from "../../../worker/engine/decision/settledRequest.ts";
import type { OpenCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import { type Found, lookedOver, openedCourse, risksOf } from "../decision/lookedOver.ts";
import { BOOK } from "../decision/shippedBook.ts";

/** Plans on the product's own tables, on bikes that are faultless but for what a test is about. */

function task(course: OpenCourse, operation: string) {
  return course.plan.tasks.find((one) => one.operation.id === operation);
}
const operations = (course: OpenCourse) => course.plan.tasks.map((one) => one.operation.id);
const steps = (course: OpenCourse) => course.plan.steps.map(({ step }) => step.id).sort();
const parts = (course: OpenCourse) =>
  Object.fromEntries(
    course.plan.tasks.flatMap(({ purchases }) => purchases.map(({ part, quantity }) => [part.id, quantity])),
  );
const safe = (found: Found = {}) => openedCourse("make-safe", found);
const reported = (course: OpenCourse, found: Found = {}) =>
  reportPlan(course, settleRequest(lookedOver(found), BOOK));
const UPPER = { componentTier: "upper" } as const;

describe("time and money add up (PERT: Malcolm, Roseboom, Clark and Fazar 1959)", () => {
  test("a faultless bike made ready: each mean (a + 4m + b) / 6, each variance ((b - a) / 6)^2, by hand", () => {
    const { plan } = safe();
    // Papers 4 8 20, state 4 7 12, wash 12 20 35, post 3 5 10, transmission 10 15 30, final check 15 25 45, photographs 20 30 50, hand-over 30 60 150;
    // seatpost out 2 4 6.
    expect(plan.minutes.mean).toBeCloseTo((56 + 44 + 127 + 33 + 100 + 160 + 190 + 420 + 24) / 6, 9);
    expect(plan.minutes.variance).toBeCloseTo(
      (16 ** 2 + 8 ** 2 + 23 ** 2 + 7 ** 2 + 20 ** 2 + 30 ** 2 + 30 ** 2 + 120 ** 2 + 4 ** 2) / 36,
      9,
    );
  });

  test("the user's own prices replace the table's and are certain", () => {
    const partPrices = { degreaser: 1, "gloves-rags": 2, "assembly-paste": 4, "chain-oil": 8 };
    const { money } = safe({ workshop: { partPrices } }).plan;
    // Degreaser for the wash and again for the transmission.
    expect(money).toEqual({ mean: 2 * 1 + 2 + 4 + 8, variance: 0 });
  });

  test("a price of low 2, typical 3 and high 7 counts as (2 + 12 + 7) / 6, twice where two are bought", () => {
    const price = BOOK.service.parts.get("tyre")!.prices.new.entry;
    const { tasks } = safe({ found: { "tyre-condition": "perished" } }).plan;
    const bought = tasks.flatMap(({ purchases }) => purchases).find(({ part }) => part.id === "tyre")!;
    expect(bought.quantity).toBe(2);
    expect(bought.unitPrice.mean).toBeCloseTo((price.low + 4 * price.typical + price.high) / 6, 9);
  });

  test("the user's speed stretches every time that is told, and a wider spread follows from the common factor", () => {
    const found = { workshop: { speedFactor: 1.5 } };
    const plain = reported(safe());
    const slow = reported(safe(found), found);
    expect(slow.minutes.mean).toBeCloseTo(1.5 * plain.minutes.mean, 9);
    slow.operations.forEach(({ minutes }, index) => {
      expect(minutes).toBeCloseTo(1.5 * plain.operations[index]!.minutes, 9);
    });
    expect(slow.minutes.p90 - slow.minutes.p10).toBeGreaterThan(plain.minutes.p90 - plain.minutes.p10);
  });

  test("the user's own selling minutes replace photographs and hand-over, and are certain", () => {
    const { plan } = safe({ workshop: { sellingMinutes: 45 } });
    const usual = safe().plan;
    expect(plan.minutes.mean).toBeCloseTo(usual.minutes.mean - (190 + 420) / 6 + 45, 9);
    expect(plan.minutes.variance).toBeCloseTo(usual.minutes.variance - (30 ** 2 + 120 ** 2) / 36, 9);
    expect(openedCourse("sell-as-found", { workshop: { sellingMinutes: 0 } }).plan.minutes.mean).toBeCloseTo(
      (56 + 44 + 127) / 6,
      9,
    );
  });
});

describe("dismantling is shared", () => {
  test("new tyres and a trued wheel take each wheel out once", () => {
    const tyres = safe({ bike: UPPER, found: { "tyre-condition": "perished" } });
    const both = safe({ bike: UPPER, found: { "tyre-condition": "perished", "rim-lateral": "out" } });
    expect(operations(both)).toEqual(expect.arrayContaining(["new-tyres", "true-wheel"]));
    expect(steps(both)).toEqual(steps(tyres));
    // Truing takes 10 20 45 and nothing else.
    expect(both.plan.minutes.mean - tyres.plan.minutes.mean).toBeCloseTo((10 + 80 + 45) / 6, 9);
  });

  test("no step and no operation stands twice in any plan", () => {
    const all = {
      "tyre-condition": "perished",
      "rim-lateral": "out",
      "hub-bearings": "rough",
      "inner-cable": "frayed",
    };
    const course = openedCourse("restore", { bike: UPPER, found: all });
    expect(new Set(steps(course)).size).toBe(course.plan.steps.length);
    expect(new Set(operations(course)).size).toBe(course.plan.tasks.length);
  });

  test("a rear tyre alone takes the rear wheel out and leaves the front, at half the pair's minutes and parts", () => {
    const rear = safe({
      found: { "tyre-condition": { front: { level: "good" }, rear: { level: "perished" } } },
    });
    const pair = safe({ found: { "tyre-condition": "perished" } });
    expect(steps(rear)).toEqual(["rear-wheel-out", "seatpost-out", "tyre-rear-off"]);
    expect(task(rear, "new-tyres")!.position).toBe("rear");
    expect(task(pair, "new-tyres")!.position).toBe("both");
    expect(task(rear, "new-tyres")!.minutes.mean).toBeCloseTo(task(pair, "new-tyres")!.minutes.mean / 2, 9);
    expect(parts(rear)).toMatchObject({ tyre: 1, tube: 1, "rim-tape": 1 });
  });

  test("front and rear told apart, both at fault, are the pair told at once", () => {
    const level = { level: "perished" };
    const apart = safe({ found: { "tyre-condition": { front: level, rear: level } } });
    const both = safe({ found: { "tyre-condition": "perished" } });
    expect(operations(apart)).toEqual(operations(both));
    expect(apart.plan.minutes.mean).toBeCloseTo(both.plan.minutes.mean, 9);
    expect(apart.plan.money.mean).toBeCloseTo(both.plan.money.mean, 9);
    expect(apart.expected.margin).toBeCloseTo(both.expected.margin, 9);
  });

  test("work counted by the wheel costs twice for two wheels", () => {
    const level = { level: "folded" };
    const front = safe({ found: { "rim-lateral": { front: level, rear: { level: "true" } } } });
    const two = safe({ found: { "rim-lateral": "folded" } });
    expect(task(two, "replace-wheel")!.minutes.mean).toBeCloseTo(
      2 * task(front, "replace-wheel")!.minutes.mean,
      9,
    );
    expect(parts(front)).toMatchObject({ "wheel-front": 1 });
    expect(parts(two)).toMatchObject({ "wheel-front": 1, "wheel-rear": 1 });
  });

  test("tape that comes off for a cable is replaced on a drop bar, and grips stay on a flat one", () => {
    const frayed = { "inner-cable": "frayed" };
    expect(operations(safe({ bike: { barType: "drop" }, found: frayed }))).toContain("re-tape");
    expect(operations(safe({ bike: { barType: "flat" }, found: frayed }))).not.toContain("re-tape");
  });
});

describe("the job is as large as the fault", () => {
  test("loose hubs are adjusted with the wheels out; with tracked cones as well they are opened and greased", () => {
    const loose = safe({ bike: UPPER, found: { "hub-bearings": "loose" } });
    expect(task(loose, "service-hub")).toMatchObject({ name: "Adjust hub cones", purchases: [] });
    expect(steps(loose)).not.toContain("rear-hub-open");
    const worn = safe({
      bike: { componentTier: "top" },
      found: { "hub-bearings": "loose", "hub-cones": "tracked" },
    });
    expect(task(worn, "service-hub")!.name).not.toBe("Adjust hub cones");
    expect(steps(worn)).toEqual(expect.arrayContaining(["front-hub-open", "rear-hub-open"]));
    expect(parts(worn)).toMatchObject({ grease: 2, balls: 2 });
  });

  test("a loose bottom bracket is adjusted where it stands and risks nothing; a rough one comes out", () => {
    const loose = safe({ bike: UPPER, found: { "bb-bearing": "loose" } });
    expect(task(loose, "service-bb")!.name).toBe("Adjust bottom bracket play");
    expect(steps(loose)).not.toContain("bb-out");
    expect(risksOf(loose).money.mean).toBe(0);
    const rough = safe({ bike: UPPER, found: { "bb-bearing": "rough" } });
    expect(steps(rough)).toEqual(expect.arrayContaining(["bb-out", "cranks-off", "chain-off"]));
    expect(risksOf(rough).minutes.mean).toBeGreaterThan(0);
  });

  test("a cup that will not move is freed where the bearing behind it must go", () => {
    const seized = { "bb-bearing": "seized" };
    expect(operations(safe({ found: seized }))).not.toContain("free-bb");
    expect(operations(safe({ found: { ...seized, "bb-removable": "stuck" } }))).toEqual(
      expect.arrayContaining(["free-bb", "new-bb"]),
    );
  });

  test("a stuck post that is told to the buyer is left and not greased; one that is freed is", () => {
    const stuck = { "seatpost-free": "stuck" };
    const told = safe({ bike: { componentTier: "entry" }, found: stuck });
    expect(told.plan.disclosed.map(({ check }) => check.id)).toEqual(["seatpost-free"]);
    expect(operations(told)).not.toContain("grease-post");
    const freed = safe({ bike: { componentTier: "top" }, found: stuck });
    expect(operations(freed)).toEqual(expect.arrayContaining(["free-seatpost", "grease-post"]));
    expect(freed.plan.disclosed).toEqual([]);
  });

  test("a post freed for another reason is cured in passing and greased", () => {
    const course = safe({ found: { "seatpost-free": "stiff", "seatpost-insertion": "wrong-size" } });
    expect(operations(course)).toEqual(
      expect.arrayContaining(["free-seatpost", "replace-seatpost", "grease-post"]),
    );
    expect(course.plan.cured.map(({ check }) => check.id).sort()).toEqual([
      "seatpost-free",
      "seatpost-insertion",
    ]);
  });

  test("new tyres are not old: a tyre both cracked and aged is replaced once and counts twice", () => {
    const course = safe({ found: { "tyre-condition": "perished", "tyre-age": "old" } });
    expect(parts(course)).toMatchObject({ tyre: 2 });
    expect(course.plan.cured.map(({ check }) => check.id).sort()).toEqual(["tyre-age", "tyre-condition"]);
  });
});

describe("a symptom costs what its cause costs", () => {
  const BRAKES = ["new-pads", "new-brake-cables", "overhaul-calipers"];

  test("weak brakes with no cause found want pads, cables and calipers; with a frayed cable the cable alone", () => {
    expect(operations(safe({ found: { "brake-function": "weak" } }))).toEqual(expect.arrayContaining(BRAKES));
    const known = safe({ found: { "brake-function": "weak", "inner-cable": "frayed" } });
    expect(operations(known).filter((id) => BRAKES.includes(id))).toEqual(["new-brake-cables"]);
    expect(known.plan.cured.map(({ check }) => check.id).sort()).toEqual(["brake-function", "inner-cable"]);
  });

  test("a cause takes over the need of its symptom: pads that are low must go where the brakes are weak", () => {
    const told = safe({ bike: { componentTier: "entry" }, found: { "brake-pads": "low" } });
    const weak = safe({
      bike: { componentTier: "entry" },
      found: { "brake-pads": "low", "brake-function": "weak" },
    });
    expect(told.plan.disclosed.map(({ check }) => check.id)).toEqual(["brake-pads"]);
    expect(operations(weak)).toContain("new-pads");
    expect(task(weak, "new-pads")!.because.map(({ need }) => need)).toEqual(["required"]);
  });

  test("brakes that failed are not left weak: what only weakens them goes as well", () => {
    const found = { "brake-function": "none", "inner-cable": "broken", caliper: "sticky" };
    expect(operations(safe({ bike: { componentTier: "entry" }, found }))).toEqual(
      expect.arrayContaining(["new-brake-cables", "overhaul-calipers"]),
    );
  });

  test("a tubular at the rear does not explain a perished tyre at the front", () => {
    const found = {
      "tyre-size": { front: { level: "current" }, rear: { level: "tubular" } },
      "tyre-condition": { front: { level: "perished" }, rear: { level: "good" } },
    };
    const course = safe({ found });
    expect(task(course, "new-tyres")!.position).toBe("front");
  });
});

describe("the part that fits is the part that is bought", () => {
  test.each<[string, Found, string, string]>([
    [
      "a tyre in a scarce size",
      { found: { "tyre-condition": "perished", "tyre-size": "scarce" } },
      "tyre-rare",
      "tyre",
    ],
    [
      "pads of a disc brake",
      { bike: { brakeType: "disc-mechanical", era: "2010s" }, found: { "brake-pads": "worn" } },
      "disc-pads",
      "rim-pads",
    ],
    ["pads of a rim brake", { found: { "brake-pads": "worn" } }, "rim-pads", "disc-pads"],
    [
      "a front wheel",
      { found: { "rim-lateral": { front: { level: "folded" }, rear: { level: "true" } } } },
      "wheel-front",
      "wheel-rear",
    ],
    [
      "grips on a flat bar",
      { bike: { barType: "flat" }, found: { "bar-covering": "missing" } },
      "grips",
      "bar-tape",
    ],
    [
      "tape on a drop bar",
      { bike: { barType: "drop" }, found: { "bar-covering": "missing" } },
      "bar-tape",
      "grips",
    ],
    [
      "a freewheel of an older standard",
      { bike: UPPER, found: { chain: "gone", "gear-standard": "older" } },
      "freewheel",
      "cassette",
    ],
    [
      "a cassette of today's",
      { bike: { ...UPPER, era: "2010s" }, found: { chain: "gone" } },
      "cassette",
      "freewheel",
    ],
    [
      "paste for carbon",
      { bike: { frameMaterial: "carbon", era: "2010s" } },
      "carbon-paste",
      "assembly-paste",
    ],
  ])("%s", (_, found, bought, other) => {
    expect(Object.keys(parts(safe(found)))).toContain(bought);
    expect(Object.keys(parts(safe(found)))).not.toContain(other);
  });

  test("lights are bought where there are none, not where some are there", () => {
    const bought = (equipment: string) =>
      Object.keys(parts(safe({ bike: { componentTier: "top" }, found: { equipment } })));
    expect(bought("none")).toEqual(expect.arrayContaining(["light-kit", "reflector-bell"]));
    expect(bought("partial")).toContain("reflector-bell");
    expect(bought("partial")).not.toContain("light-kit");
  });

  test("missing parts are bought, hunted down and fitted", () => {
    const missing = safe({ find: { missingParts: ["saddle", "pedals"] } });
    expect(parts(missing)).toMatchObject({ saddle: 1, pedals: 1 });
    const { minutes } = BOOK.service.operations.get("complete-fittings")!;
    const mean = (minutes.optimistic + 4 * minutes.likely + minutes.pessimistic) / 6;
    expect(task(missing, "complete-fittings")!.minutes.mean).toBeCloseTo(
      mean + 2 * BOOK.catalogue.defaults.huntMinutesPerMissingPart,
      9,
    );
    expect(operations(safe())).not.toContain("complete-fittings");
  });

  test("deliveries are paid where a part is ordered: once for making safe, two and a half times for restoring", () => {
    const delivery = (course: OpenCourse) =>
      course.plan.extras.find(({ kind }) => kind === "delivery")?.money.mean ?? 0;
    const tyres: Found = { bike: UPPER, found: { "tyre-condition": "perished" } };
    const { low, typical, high } = BOOK.catalogue.defaults.delivery.perOrder;
    const one = (low + 4 * typical + high) / 6;
    expect(delivery(safe(tyres))).toBeCloseTo(one, 9);
    expect(delivery(openedCourse("restore", tyres))).toBeCloseTo(2.5 * one, 9);
    // Doses from the shelf are not ordered.
    expect(delivery(safe())).toBe(0);
  });
});

describe("who does it, and with what", () => {
  const notched: Found = { bike: UPPER, found: { headset: "seized" } };

  test("safety-critical work beyond the user's skill is done by a mechanic, paid for, and shown as such", () => {
    const beyond: Found = { ...notched, workshop: { skill: 2 } };
    const course = safe(beyond);
    expect(operations(course)).toContain("paid-safety-check");
    expect(Object.keys(parts(course))).toContain("svc-safety-check");
    const shown = reported(course, beyond).operations.find(
      ({ operation }) => operation === "replace-headset",
    )!;
    expect(shown.doneBy).toBe("mechanic");
  });

  test("with the skill for it the user does it alone", () => {
    const course = safe({ ...notched, workshop: { skill: 3 } });
    expect(operations(course)).not.toContain("paid-safety-check");
    const shown = reported(course, notched).operations.find(
      ({ operation }) => operation === "replace-headset",
    )!;
    expect(shown.doneBy).toBe("self");
  });

  test("a tool that is not at hand is borrowed or bought, whichever is cheaper, once for all that want it", () => {
    const none: Found = { ...notched, workshop: { tools: [] } };
    const { extras, money } = safe(none).plan;
    const tools = extras.filter(({ kind }) => kind === "tool");
    const wanted = ["cup-press", "crown-race-tool", "torque-wrench"].map((id) => BOOK.service.tools.get(id)!);
    expect(tools.map(({ name }) => name).sort()).toEqual(wanted.map(({ name }) => name).sort());
    for (const tool of wanted) {
      expect(tools.find(({ name }) => name === tool.name)).toMatchObject({
        unit: tool.borrow < tool.buy ? "borrowed" : "bought",
        money: { mean: Math.min(tool.borrow, tool.buy), variance: 0 },
      });
    }
    const cost = wanted.reduce((sum, { buy, borrow }) => sum + Math.min(buy, borrow), 0);
    expect(money.mean - safe(notched).plan.money.mean).toBeCloseTo(cost, 9);
  });

  test("a tool that is at hand costs nothing", () => {
    const all = BOOK.catalogue.service.tools.map(({ id }) => id);
    expect(safe({ ...notched, workshop: { tools: all } }).plan).toEqual(safe(notched).plan);
  });

  test("the shopping list is what the operations buy, and with tools and delivery it is the whole cost", () => {
    const found: Found = {
      bike: UPPER,
      found: { chain: "gone", "tyre-condition": "perished" },
      workshop: { tools: [] },
    };
    const plan = reported(openedCourse("restore", found), found);
    const total = plan.shoppingList.reduce((sum, { quantity, price }) => sum + quantity * price, 0);
    expect(total).toBeCloseTo(plan.cost.mean, 9);
    const bought = plan.operations
      .flatMap((one) => one.parts)
      .reduce((sum, { quantity, price }) => sum + quantity * price, 0);
    const listed = plan.shoppingList.filter(({ kind }) => kind !== "tool" && kind !== "delivery");
    expect(listed.reduce((sum, { quantity, price }) => sum + quantity * price, 0)).toBeCloseTo(bought, 9);
  });
});
