import { describe, expect, test } from "vitest";
import { loadCatalogue } from "../../worker/tables/loadCatalogue.ts";
import { FILES, type RawTables } from "../../worker/tables/rawTables.ts";
import { TableError } from "../../worker/tables/tableError.ts";
import { readCatalogue, SHIPPED_TABLES } from "../../worker/tables.ts";
import { type Edit, editedTables, indexOfRow, tablesWithRows } from "./tables/editedTables.ts";

function refusal(tables: RawTables): TableError {
  try {
    loadCatalogue(tables);
  } catch (error) {
    if (error instanceof TableError) return error;
    throw error;
  }
  throw new Error("the tables were not refused");
}

const remedy = (check: string, level: string) => indexOfRow("remedies", { check, level });
const frameCracks = remedy("frame-cracks", "crack-attachment");
const spacingOff = indexOfRow("remedies", { check: "dropout-spacing", level: "off" }) + 1;

/** What is broken; where; the field that the error must name, and words of the requirement. */
type Case = readonly [string, Edit["table"], Edit["row"], Edit["path"], unknown, string, RegExp];

const PARTS = ["partsValue", null] as const;
const HISTORY = ["history", null] as const;
const RULES = ["evidenceRules", null] as const;
const SELLING = ["selling", null] as const;

const BROKEN: readonly Case[] = [
  // What a selling plan assumes.
  ["seasons of buyers that do not average 1", ...SELLING, ["byMonth", 3], 2, "byMonth", /a mean of 1/],
  ["a kind without buyers", ...SELLING, ["byCategory", "tandem"], undefined, "byCategory.tandem", /./],
  ["a quick sale for the full price", ...SELLING, ["quickSale"], 1, "quickSale", /./],
  ["price steps that fall", ...SELLING, ["priceSteps", 1, "below"], 10, "priceSteps", /below rising/],
  ["a limit off its step", ...SELLING, ["priceSteps", 1, "step"], 7, "priceSteps", /multiple of its step/],
  [
    "last steps that cannot come again",
    ...SELLING,
    ["priceSteps", 3, "below"],
    2000,
    "priceSteps",
    /factor of ten/,
  ],
  // Work whose end is open.
  [
    "an open end without a failure",
    "operations",
    "wash",
    ["openEnded"],
    true,
    "failure",
    /a failure that ends nothing by itself/,
  ],
  [
    "an open end that ends the frame",
    "operations",
    "free-bb",
    ["failure", "ends"],
    "frame",
    "failure",
    /a failure that ends nothing by itself/,
  ],
  [
    "an open end that is certain to come",
    "operations",
    "free-bb",
    ["failure", "chances", 2, "probability"],
    0,
    "failure.chances[2].probability",
    /above 0 and below 1/,
  ],
  [
    "an open end at each wheel",
    "operations",
    "free-bb",
    ["per"],
    "wheel",
    "per",
    /bike where the end is open/,
  ],
  [
    "an open end whose times do not differ",
    "operations",
    "free-bb",
    ["minutes", "optimistic"],
    40,
    "minutes",
    /optimistic < likely < pessimistic/,
  ],
  [
    "an open end whose smaller job has times that do not differ",
    "operations",
    "free-bb",
    ["variants", 0, "minutes", "pessimistic"],
    15,
    "variants[0].minutes",
    /optimistic < likely < pessimistic/,
  ],
  [
    "an open end that starts after it is given up",
    "operations",
    "free-bb",
    ["minutes"],
    { optimistic: 240, likely: 250, pessimistic: 400 },
    "minutes",
    /below stopRule.mostMinutes/,
  ],
  [
    "an open end that follows a failure",
    "operations",
    "replace-stem",
    ["failure", "thenOneOf"],
    [["free-bb"]],
    "failure.thenOneOf[0]",
    /whose end is not open, got free-bb/,
  ],
  [
    "a last limit between two looks",
    "defaults",
    null,
    ["stopRule", "mostMinutes"],
    250,
    "stopRule",
    /multiple of stepMinutes/,
  ],
  // Names that stand nowhere.
  ["an unknown check", "remedies", 0, ["check"], "nope", "level", /known check, got nope/],
  ["an unknown level", "remedies", 0, ["level"], "nope", "level", /known level, got frame-cracks:nope/],
  [
    "an unknown operation that cures",
    "remedies",
    0,
    ["options", 0, 0],
    "nope",
    "options[0][0]",
    /known operation/,
  ],
  [
    "an unknown cause",
    "remedies",
    0,
    ["causes"],
    [{ check: "rust", levels: ["nope"] }],
    "causes[0]",
    /known level/,
  ],
  ["an unknown step", "operations", "new-chain", ["steps", 0], "nope", "steps[0]", /known step, got nope/],
  ["an unknown part", "operations", "new-chain", ["uses", 0, "part"], "nope", "uses[0].part", /known part/],
  [
    "a size that an unknown check shows",
    "parts",
    "tyre",
    ["sizes", 0, "check"],
    "nope",
    "sizes[0].check",
    /known check, got nope/,
  ],
  [
    "an unknown substitute",
    "operations",
    "new-tyres",
    ["uses", 0, "instead", 0, "part"],
    "nope",
    "uses[0].instead[0].part",
    /known part/,
  ],
  [
    "a substitute at an unknown level",
    "operations",
    "new-tyres",
    ["uses", 0, "instead", 0, "at", 0, "levels", 0],
    "nope",
    "uses[0].instead[0].at[0]",
    /known level/,
  ],
  ["an unknown tool", "operations", "new-chain", ["tools", 0], "nope", "tools[0]", /known tool/],
  ["an unknown predecessor", "operations", "new-chain", ["after", 0], "nope", "after[0]", /known operation/],
  [
    "an unknown exception",
    "operations",
    "final-check",
    ["afterAllExcept", 0],
    "nope",
    "afterAllExcept[0]",
    /known operation/,
  ],
  [
    "an unknown consequence",
    "operations",
    "bleed",
    ["failure", "thenOneOf", 0, 0],
    "nope",
    "failure.thenOneOf[0][0]",
    /known operation/,
  ],
  [
    "a failure at an unknown level",
    "operations",
    "free-stem",
    ["failure", "chances", 0, "at", 0, "levels", 0],
    "nope",
    "failure.chances[0].at[0]",
    /known level/,
  ],
  [
    "a variant at an unknown level",
    "operations",
    "service-hub",
    ["variants", 0, "at", "levels", 0],
    "nope",
    "variants[0].at",
    /known level/,
  ],
  [
    "a variant with an unknown step",
    "operations",
    "service-hub",
    ["variants", 0, "steps", 0],
    "nope",
    "variants[0].steps[0]",
    /known step/,
  ],
  [
    "an unknown level revealed",
    "operations",
    "wash",
    ["reveals", 0, "atLeast"],
    "nope",
    "reveals[0]",
    /known level/,
  ],
  [
    "a test of an unknown level",
    "operations",
    "decide-crack",
    ["tests", 0, "bad"],
    "nope",
    "tests[0]",
    /known level/,
  ],
  [
    "a step blocked by an unknown level",
    "steps",
    "bb-out",
    ["blockedBy", "levels", 0],
    "nope",
    "blockedBy",
    /known level/,
  ],
  ["an unknown implied step", "steps", "bb-out", ["implies", 0], "nope", "implies[0]", /known step/],
  ["unknown work entailed", "steps", "bar-tape-off", ["entails", 0], "nope", "entails[0]", /known operation/],
  ["a prior of an unknown check", "priors", 0, ["check"], "nope", "check", /known check/],
  ["a modifier at an unknown level", "priorModifiers", 0, ["fromLevel"], "nope", "fromLevel", /known level/],
  ["an acquittal by an unknown level", "acquittals", 0, ["level"], "nope", "level[0]", /known level/],
  ["an acquittal of an unknown check", "acquittals", 0, ["acquits", 0], "nope", "acquits[0]", /known check/],
  [
    "a loading of an unknown check",
    ...HISTORY,
    ["loadings", 0, "check"],
    "nope",
    "loadings[0]",
    /known check/,
  ],
  [
    "a rule on an unknown check",
    ...RULES,
    ["rules", 0, "seen", "check"],
    "nope",
    "rules[0].seen",
    /known check/,
  ],
  [
    "a rule from an unknown level",
    ...RULES,
    ["rules", 0, "seen", "atLeast"],
    "nope",
    "rules[0].seen",
    /known level/,
  ],
  [
    "a rule to an unknown level",
    ...RULES,
    ["rules", 0, "unseen", "atLeast"],
    "nope",
    "rules[0].unseen",
    /known level/,
  ],
  [
    "a caution on an unknown check",
    "cautions",
    "crack-frame",
    ["clauses", 0, "findings", 0, "check"],
    "nope",
    "clauses[0].findings[0]",
    /known check/,
  ],
  [
    "a caution on an unknown level",
    "cautions",
    "crack-frame",
    ["clauses", 0, "findings", 0, "levels", 0],
    "nope",
    "clauses[0].findings[0]",
    /known level/,
  ],
  [
    "a caution on an unknown operation",
    "cautions",
    "crack-frame",
    ["clauses", 0, "operations"],
    ["nope"],
    "clauses[0].operations[0]",
    /known operation/,
  ],
  [
    "a caution on an unknown part",
    "cautions",
    "crack-frame",
    ["clauses", 0, "uses"],
    ["nope"],
    "clauses[0].uses[0]",
    /known part/,
  ],
  [
    "a missing part that is unknown",
    "defaults",
    null,
    ["missingParts", "minor-missing", 0],
    "nope",
    "missingParts.minor-missing[0]",
    /known part/,
  ],
  [
    "an unknown level that spoils parts",
    "partsValue",
    null,
    ["spoiled", 0, "levels", 0],
    "nope",
    "spoiled[0]",
    /known level/,
  ],
  // Pieces that a bike breaks into.
  ["an unknown check that spoils", ...PARTS, ["spoiled", 0, "check"], "nope", "spoiled[0]", /known check/],
  [
    "an unknown piece that is spoiled",
    ...PARTS,
    ["spoiled", 0, "piece"],
    "nope",
    "spoiled[0].piece",
    /known piece, got nope/,
  ],
  [
    "an unknown part of a piece",
    ...PARTS,
    ["pieces", "others", 0, "kinds", 0, "parts", 0],
    "nope",
    "pieces.others[0].kinds[0].parts[0]",
    /known part/,
  ],
  [
    "a part of a piece that nobody sells used",
    ...PARTS,
    ["pieces", "others", 0, "kinds", 0, "parts", 0],
    "tube",
    "pieces.others[0].kinds[0].parts",
    /used price, got tube/,
  ],
  [
    "a piece with two rows",
    ...PARTS,
    ["pieces", "others", 1, "id"],
    "wheels",
    "pieces.others[1].id",
    /twice/,
  ],
  ["a row for the frame", ...PARTS, ["pieces", "others", 1, "id"], "frame", "pieces.others[1].id", /twice/],
  [
    "shares that do not sum to 1",
    ...PARTS,
    ["pieces", "others", 0, "kinds", 0, "share", "upper"],
    0.25,
    "pieces.others",
    /sum to 1 in tier upper, got 1\.1/,
  ],
  [
    "a haircut that the shares do not follow",
    ...PARTS,
    ["frameUnsaleable", "top"],
    0.5,
    "pieces.others",
    /sum to 1 in tier top/,
  ],
  [
    "a share above 1",
    ...PARTS,
    ["pieces", "others", 0, "kinds", 0, "sells", "mid"],
    1.2,
    "pieces.others[0].kinds[0].sells.mid",
    /<=1/,
  ],
  [
    "no minutes for a piece",
    ...PARTS,
    ["pieces", "others", 0, "kinds", 0, "minutes"],
    0,
    "pieces.others[0].kinds[0].minutes",
    />0/,
  ],
  [
    "a kind on a word that its attribute does not have",
    ...PARTS,
    ["pieces", "others", 1, "kinds", 0, "onlyIf", 0, "isOneOf", 0],
    "nope",
    "pieces.others[1].kinds[0].onlyIf[0].isOneOf",
    /nope is no drivetrain/,
  ],
  [
    "a kind behind one that fits every bike",
    ...PARTS,
    ["pieces", "others", 1, "kinds", 0, "onlyIf"],
    [],
    "pieces.others[1].kinds[0]",
    /a condition, or no kind after it/,
  ],
  [
    "a kind on what the plain bike does not tell",
    ...PARTS,
    ["pieces", "plain", "fork"],
    undefined,
    "pieces.others[5].kinds[0].onlyIf",
    /the plain bike tells, got fork/,
  ],
  [
    "a plain bike of no known kind",
    ...PARTS,
    ["pieces", "plain", "fork"],
    "nope",
    "pieces.plain.fork",
    /one of/,
  ],
  [
    "crash-exposed pieces that name none",
    ...PARTS,
    ["pieces", "crash", "exposed"],
    [],
    "pieces.crash.exposed",
    />=1/,
  ],
  [
    "an unknown piece exposed in a crash",
    ...PARTS,
    ["pieces", "crash", "exposed", 0],
    "nope",
    "pieces.crash.exposed[0]",
    /known piece, got nope/,
  ],
  [
    "an unknown sign of a crash",
    ...PARTS,
    ["pieces", "crash", "signs", 0, "levels", 0],
    "nope",
    "pieces.crash.signs[0]",
    /known level/,
  ],
  [
    "a sound level as a sign of a crash",
    ...PARTS,
    ["pieces", "crash", "signs", 0, "levels"],
    ["none", "suspect", "clear"],
    "pieces.crash.signs[0].levels",
    /faults alone, got none/,
  ],
  [
    "a sign of a crash that a worse level is not",
    ...PARTS,
    ["pieces", "crash", "signs", 0, "levels"],
    ["suspect"],
    "pieces.crash.signs[0].levels",
    /from the mildest sign on, without clear/,
  ],
  [
    "a worse level that takes less off a piece",
    ...PARTS,
    ["spoiled", 1, "share"],
    0.1,
    "spoiled[0].share",
    /no worse level undercuts, as dead does/,
  ],
  [
    "a level that takes off a piece twice",
    ...PARTS,
    ["spoiled", 1, "levels"],
    ["worn", "dead"],
    "spoiled[0].levels",
    /one row for a level and a piece, got worn twice/,
  ],
  ["no piece to list", ...PARTS, ["pieces", "most"], 0, "pieces.most", />0/],
  // Words outside the vocabulary.
  ["an unknown course", "operations", "wash", ["alwaysIn", 0], "nope", "alwaysIn[0]", /restore/],
  [
    "an unknown attribute",
    "remedies",
    frameCracks,
    ["when", 0, "attribute"],
    "nope",
    "when[0].attribute",
    /frameMaterial/,
  ],
  [
    "an unknown value",
    "remedies",
    frameCracks,
    ["when", 0, "isOneOf", 0],
    "nope",
    "when[0].isOneOf",
    /nope is no frameMaterial/,
  ],
  ["a field with a typing error", "operations", "new-chain", ["skil"], 2, "it", /skil/],
  [
    "a frame material that is none",
    "operations",
    "bleed",
    ["notOnMaterials"],
    ["wood"],
    "notOnMaterials[0]",
    /steel/,
  ],
  // Chances.
  ["chances that do not sum to 1", "priors", 0, ["probabilities", 0], 0.5, "probabilities", /sum to 1/],
  [
    "a level without a chance",
    "priors",
    0,
    ["probabilities"],
    [0.5, 0.5],
    "probabilities",
    /each of the 4 levels of frame-cracks, got 2/,
  ],
  [
    "failure chances that do not end",
    "operations",
    "bleed",
    ["failure", "chances", 0, "when"],
    [{ attribute: "kept", isOneOf: ["indoors"] }],
    "failure.chances",
    /last row holds always/,
  ],
  // Histories.
  ["a loading on an unknown factor", ...HISTORY, ["loadings", 0, "luck"], 0.5, "loadings[0]", /luck/],
  ["a loading that is none", ...HISTORY, ["loadings", 0, "crash"], 0, "loadings[0].crash", />0/],
  ["a loading above 1", ...HISTORY, ["loadings", 0, "crash"], 1.5, "loadings[0].crash", /<=1/],
  [
    "loadings of a check twice",
    ...HISTORY,
    ["loadings", 1, "check"],
    "frame-cracks",
    "loadings[1].check",
    /one row for/,
  ],
  [
    "loadings of papers",
    ...HISTORY,
    ["loadings", 0, "check"],
    "serial",
    "loadings[0].check",
    /of the bike itself/,
  ],
  [
    "a factor that cannot be",
    ...HISTORY,
    ["factors", 0, "chance", "indoors"],
    0,
    "factors[0].chance.indoors",
    />0/,
  ],
  [
    "a factor that must be",
    ...HISTORY,
    ["factors", 0, "chance", "indoors"],
    1,
    "factors[0].chance.indoors",
    /<1/,
  ],
  [
    "a factor without a chance",
    ...HISTORY,
    ["factors", 3, "chance", "outdoors"],
    undefined,
    "factors[3].chance.outdoors",
    /number/,
  ],
  ["a factor out of its place", ...HISTORY, ["factors", 0, "id"], "crash", "factors[0].id", /weather/],
  ["a cap that caps nothing", ...RULES, ["caps", "least"], 1, "caps.least", /<1/],
  ["a cap below 1", ...RULES, ["caps", "most"], 1, "caps.most", />1/],
  ["no scale", ...HISTORY, ["scale"], 0, "scale", />0/],
  ["a rule seen from both ends", ...RULES, ["rules", 0, "seen", "atMost"], "none", "rules[0].seen", /either/],
  ["a rule without odds", ...RULES, ["rules", 0, "odds"], 0, "rules[0].odds", />0/],
  // Order.
  [
    "a step that implies itself by another",
    "steps",
    "rear-wheel-out",
    ["implies"],
    ["tyre-rear-off"],
    "implies",
    /no cycle, got rear-wheel-out > tyre-rear-off > rear-wheel-out/,
  ],
  [
    "an operation that comes before itself",
    "operations",
    "query-serial",
    ["after"],
    ["record-state"],
    "after",
    /no cycle/,
  ],
  [
    "work that comes after the final check",
    "operations",
    "wash",
    ["after"],
    ["final-check"],
    "after",
    /no cycle.*final-check/,
  ],
  [
    "minutes out of order",
    "operations",
    "new-chain",
    ["minutes", "likely"],
    99,
    "minutes",
    /optimistic <= likely <= pessimistic/,
  ],
  [
    "a price range out of order",
    "parts",
    "chain",
    ["prices", "new", "mid", "low"],
    99,
    "prices.new.mid",
    /low <= typical <= high/,
  ],
  ["a torque range out of order", "operations", "new-pedals", ["torque", "from"], 99, "torque", /from <= to/],
  [
    "a gap between thresholds",
    "checks",
    "rotor",
    ["measurement", "thresholds", 0, "below"],
    1.4,
    "measurement.thresholds",
    /without gap or overlap/,
  ],
  [
    "an overlap of thresholds",
    "checks",
    "rotor",
    ["measurement", "thresholds", 0, "below"],
    1.55,
    "measurement.thresholds",
    /without gap or overlap/,
  ],
  // Work that must not be done, or not without proof.
  [
    "cold setting for any frame",
    "operations",
    "cold-set",
    ["onlyIf"],
    [],
    "onlyIf",
    /no frameMaterial but steel/,
  ],
  [
    "a jig for aluminium",
    "operations",
    "align-frame-jig",
    ["onlyIf", 0, "isOneOf"],
    ["steel", "aluminium"],
    "onlyIf",
    /no frameMaterial but steel/,
  ],
  [
    "fork blades of carbon bent",
    "operations",
    "align-fork",
    ["onlyIf", 1, "isOneOf"],
    ["steel", "carbon"],
    "onlyIf",
    /no forkMaterial but steel/,
  ],
  ["work without a proof", "operations", "new-pads", ["proof"], undefined, "proof", /./],
  ["a proof without words", "operations", "new-pads", ["proof"], "", "proof", /./],
  [
    "a standard that is not named",
    "checks",
    "frame-cracks",
    ["limitSource"],
    { text: "some standard", kind: "standard", fromMemory: true },
    "limitSource.text",
    /name of the standard/,
  ],
  // Cures.
  [
    "a cure that no bike allows",
    "remedies",
    spacingOff,
    ["options"],
    [["cold-set"]],
    "options",
    /option that the bike allows, got none on .*frameMaterial aluminium/,
  ],
  [
    "a worse level with a cheaper cure",
    "remedies",
    remedy("headset", "indexed"),
    ["options"],
    [["adjust-headset"]],
    "options",
    /no cheaper than that of the milder headset:rough/,
  ],
  // Buying.
  [
    "a part bought used without a used price",
    "parts",
    "chain",
    ["buy", "state"],
    "used",
    "buy.state",
    /used price/,
  ],
  [
    "a substitute without an occasion",
    "operations",
    "new-tyres",
    ["uses", 0, "instead", 0, "at"],
    [],
    "uses[0].instead[0]",
    /says when/,
  ],
  ["a tool that is dearer to borrow", "tools", "vice", ["borrow"], 500, "it", /borrow <= buy/],
  [
    "a model without its whole triangle",
    "valueModel",
    null,
    ["squareRootInformation"],
    [1],
    "squareRootInformation",
    /upper triangle/,
  ],
  [
    "demo sales that leave the spread infinite",
    "valuePrior",
    null,
    ["demoSalesCount"],
    2,
    "demoSalesCount",
    /more than 2/,
  ],
  ["a spread of nothing", "valuePrior", null, ["marketSd"], 0, "marketSd", />0/],
  [
    "a driver without a spread",
    "valuePrior",
    null,
    ["driverSd", "kind"],
    undefined,
    "driverSd.kind",
    /number/,
  ],
  ["shares that miss one", "valuePrior", null, ["shares", "era", "1990s"], 0.2, "shares.era", /sum to 1/],
  [
    "shares of condition that miss one",
    "valuePrior",
    null,
    ["shares", "condition", 0],
    0.3,
    "shares.condition",
    /sum to 1/,
  ],
  [
    "materials of an era that miss one",
    "valuePrior",
    null,
    ["shares", "frameMaterial", "1990s", "steel"],
    0.7,
    "shares.frameMaterial.1990s",
    /sum to 1/,
  ],
  [
    "an unknown kind among the shares",
    "valuePrior",
    null,
    ["shares", "category", "nope"],
    0,
    "shares.category",
    /nope/,
  ],
];

describe("the loader refuses, by file, row and field", () => {
  test.each(BROKEN)("%s", (_, table, row, path, value, field, requirement) => {
    const error = refusal(editedTables({ table, row, path, value }));
    expect([error.file, error.row, error.field]).toEqual([FILES[table], row, field]);
    expect(error.requirement).toMatch(requirement);
    expect(error.message).toContain(`${error.file}${row === null ? "" : `, row ${row}`}: ${field} requires `);
  });

  test.each(["checks", "steps", "operations", "parts", "tools", "cautions"] as const)(
    "an id twice in %s",
    (table) => {
      const error = refusal(tablesWithRows(table, (rows) => [...rows, rows[0]!]));
      expect([error.file, error.field]).toEqual([FILES[table], "id"]);
      expect(error.requirement).toContain("twice");
    },
  );

  test("a missing prior for an era and a way of being kept", () => {
    const gone = (row: Record<string, unknown>) =>
      row.check === "rust" && row.era === "1990s" && row.kept === "indoors";
    const error = refusal(tablesWithRows("priors", (rows) => rows.filter((row) => !gone(row))));
    expect(error.message).toBe(
      "priors.json, row rust 1990s indoors: check requires a row for rust 1990s indoors",
    );
  });

  test("a second prior for the same bikes", () => {
    const error = refusal(tablesWithRows("priors", (rows) => [...rows, rows[0]!]));
    expect(error.requirement).toBe("one row for frame-cracks pre-1970 indoors, got a second");
  });

  test("a level that blocks riding and has neither cure, empty remedy nor end", () => {
    const error = refusal(
      tablesWithRows("remedies", (rows) =>
        rows.filter((row) => row.check !== "headset" || row.level !== "loose"),
      ),
    );
    expect([error.file, error.row, error.field]).toEqual(["checks.json", "headset", "levels"]);
    expect(error.requirement).toContain("for loose on any bike");
  });

  test("a level that blocks on some bikes only, without a word for those", () => {
    const path = ["adjustments", 0, "safety"];
    const error = refusal(editedTables({ table: "checks", row: "frame-dents", path, value: "block" }));
    expect([error.file, error.row, error.field]).toEqual(["checks.json", "frame-dents", "levels"]);
    expect(error.requirement).toMatch(/for shallow on frameMaterial titanium/);
  });

  test("two remedies for one bike", () => {
    const rows = SHIPPED_TABLES.remedies as readonly unknown[];
    const error = refusal(tablesWithRows("remedies", (all) => [...all, all[frameCracks]!]));
    expect([error.file, error.row, error.field]).toEqual(["remedies.json", rows.length, "when"]);
    expect(error.requirement).toContain(`in common with row ${frameCracks}`);
  });

  test("a table that is no list, or no table at all", () => {
    expect(refusal({ ...SHIPPED_TABLES, parts: {} }).message).toMatch(/^parts\.json: it requires /);
    expect(refusal({ ...SHIPPED_TABLES, defaults: null }).message).toMatch(/^defaults\.json: it requires /);
  });
});

describe("the shipped tables", () => {
  test("pass every check", () => {
    expect(() => loadCatalogue(SHIPPED_TABLES)).not.toThrow();
  });

  test("are loaded once", () => {
    expect(readCatalogue()).toBe(readCatalogue());
  });

  test("left-out lists, nulls and flags are filled in", () => {
    const step = readCatalogue().service.steps.find(({ id }) => id === "chain-off");
    expect(step).toEqual({
      id: "chain-off",
      name: "Chain off and on",
      minutes: { optimistic: 3, likely: 5, pessimistic: 10 },
      implies: [],
      position: null,
      onlyIf: [],
      blockedBy: null,
      entails: [],
    });
  });
});

describe("the version", () => {
  const { version } = readCatalogue();

  test("does not depend on the order of fields or on fields that say the default", () => {
    const reversed = tablesWithRows("steps", (rows) =>
      rows.map((row) => ({ implies: [], ...Object.fromEntries(Object.entries(row).reverse()) })),
    );
    expect(loadCatalogue(reversed).version).toBe(version);
  });

  test("changes with any figure", () => {
    const dearer = editedTables({
      table: "parts",
      row: "chain",
      path: ["prices", "new", "top", "high"],
      value: 62.5,
    });
    const rarer = editedTables({
      table: "operations",
      row: "bleed",
      path: ["failure", "chances", 0, "probability"],
      value: 0.26,
    });
    const versions = [version, loadCatalogue(dearer).version, loadCatalogue(rarer).version];
    expect(new Set(versions).size).toBe(3);
    for (const one of versions) expect(one).toMatch(/^[0-9a-f]{16}$/);
  });
});
