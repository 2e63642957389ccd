import * as z from "zod";
import tyreMarkings from "../../../data/tyre-markings.json" with { type: "json" };
import { type AttributeName, type Attributes, ERAS, KEPT } from "../../../worker/engine/bicycle.ts";
import type { Check, Level, Measurement, Safety, Severity } from "../../../worker/engine/inspection/check.ts";
import { FACTORS } from "../../../worker/engine/inspection/history/factor.ts";
import type { HistoryTable } from "../../../worker/engine/inspection/history/historyTable.ts";
import type { InspectionTables } from "../../../worker/engine/inspection/inspectionTables.ts";
import { tyreMarkingRow } from "../../../worker/tables/tyreMarkingSchema.ts";

/** The product's own names of tyre sizes. */
export const TYRE_NAMES = z.array(tyreMarkingRow).parse(tyreMarkings);

/** A few checks of every kind, so that the laws are tested apart from the product's own data. */

function level(id: string, severity: Severity, safety: Safety): Level {
  return { id, severity, safety, description: `It is ${id}`, conditionPenalty: 0, terminal: null };
}

function check(id: string, levels: readonly Level[], more: Partial<Check> = {}): Check {
  return {
    id,
    name: `The ${id}`,
    group: "frame-fork",
    spoke: "frame",
    where: "spot",
    priority: "core",
    minutes: 1,
    tools: [],
    how: "Look.",
    appliesTo: [],
    perWheel: false,
    ordered: true,
    functional: false,
    levels,
    adjustments: [],
    measurement: null,
    neededFrom: [],
    ifNotChecked: "advisory",
    limitSource: { text: "test", kind: "common practice", fromMemory: true },
    ...more,
  };
}

function measurement(more: Pick<Measurement, "inputs" | "derivation"> & Partial<Measurement>): Measurement {
  return { unit: "mm", thresholds: [], thresholdsWhen: [], flags: [], readingError: 0.5, ...more };
}

function input(id: string, max: number, unit: "mm" | "count" = "mm") {
  return { id, label: `the ${id}`, unit, min: 0, max, optional: false };
}

const good = level("good", 0, "none");
const poor = level("poor", 1, "advisory");
const bad = level("bad", 3, "block");

export const SMALL_CHECKS: readonly Check[] = [
  check("fork", [good, poor, bad]),
  check("spacing", [good, poor, bad], {
    adjustments: [
      {
        level: "good",
        when: [{ attribute: "frameMaterial", isOneOf: ["aluminium"] }],
        safety: "advisory",
        note: "Only steel may be sprung in",
      },
    ],
    measurement: measurement({
      inputs: [input("spacing", 250), input("hub", 250)],
      derivation: { kind: "absolute-difference", of: ["spacing", "hub"] },
      thresholds: [
        { level: "good", from: 0, below: 1 },
        { level: "poor", from: 1, below: 3 },
        { level: "bad", from: 3, below: null },
      ],
    }),
  }),
  check("string", [good, poor, bad], {
    measurement: measurement({
      inputs: [
        input("left", 150),
        input("right", 150),
        { ...input("headToSeatTube", 2500), optional: true },
        { ...input("headToAxle", 3500), optional: true },
      ],
      derivation: { kind: "string-test", defaultRatio: 0.58 },
      thresholds: [
        { level: "bad", from: 8, below: null },
        { level: "good", from: 0, below: 2 },
        { level: "poor", from: 2, below: 8 },
      ],
      readingError: 1,
    }),
  }),
  check("post", [good, bad, level("wrong", 3, "block")], {
    measurement: measurement({
      inputs: [input("inserted", 600), input("required", 600)],
      derivation: { kind: "surplus", of: ["inserted", "required"] },
      thresholds: [
        { level: "good", from: 0, below: null },
        { level: "bad", from: null, below: 0 },
      ],
      flags: [{ id: "wrong_diameter", label: "wrong diameter", setsLevel: "wrong" }],
      readingError: 1,
    }),
  }),
  check("chain", [good, poor, bad], {
    group: "transmission",
    measurement: measurement({
      unit: "%",
      inputs: [input("length24", 317)],
      derivation: { kind: "elongation", pitches: 24, pitch: 12.7, shortestAllowedPercent: -1 },
      thresholds: [
        { level: "good", from: null, below: 0.5 },
        { level: "poor", from: 0.5, below: 1 },
        { level: "bad", from: 1, below: null },
      ],
      flags: [{ id: "rusted_stiff", label: "rusted stiff", setsLevel: "bad" }],
      readingError: 0.164,
    }),
    neededFrom: [
      { sprocketsFrom: 1, sprocketsTo: 8, unknown: false, level: "bad" },
      { sprocketsFrom: 9, sprocketsTo: 99, unknown: true, level: "poor" },
    ],
  }),
  check("spokes", [good, poor, bad], {
    group: "wheels-tyres",
    perWheel: true,
    measurement: measurement({
      unit: "count",
      inputs: [input("count", 72, "count")],
      derivation: { kind: "value", of: "count" },
      thresholds: [
        { level: "good", from: 0, below: 1 },
        { level: "poor", from: 1, below: 3 },
        { level: "bad", from: 3, below: null },
      ],
      readingError: 0,
    }),
  }),
  check("size", [level("current", 0, "none"), level("rare", 3, "none"), level("glued", 2, "advisory")], {
    group: "wheels-tyres",
    perWheel: true,
    ordered: false,
    measurement: measurement({
      inputs: [input("bsd", 800)],
      derivation: {
        kind: "bead-seat",
        of: "bsd",
        supply: { current: [622, 584, 559], glued: [0] },
        unknownLevel: "rare",
      },
      readingError: 0,
    }),
  }),
  check("brake", [good, poor, bad], { group: "brakes" }),
  check("pads", [good, poor, bad], {
    group: "brakes",
    perWheel: true,
    appliesTo: [{ attribute: "brakeType", isOneOf: ["rim-caliper", "disc-mechanical"] }],
    measurement: measurement({
      inputs: [input("thickness", 30)],
      derivation: { kind: "value", of: "thickness" },
      thresholds: [
        { level: "bad", from: 0, below: 1.5 },
        { level: "poor", from: 1.5, below: 3 },
        { level: "good", from: 3, below: null },
      ],
      thresholdsWhen: [
        {
          when: [{ attribute: "brakeType", isOneOf: ["disc-mechanical"] }],
          thresholds: [
            { level: "bad", from: 0, below: 0.8 },
            { level: "poor", from: 0.8, below: 1.5 },
            { level: "good", from: 1.5, below: null },
          ],
        },
      ],
      flags: [{ id: "hard", label: "hard or glazed", raisesTo: "poor" }],
      readingError: 0.3,
    }),
  }),
  check("serial", [good, level("removed", 4, "block")], { group: "paperwork", ordered: false }),
];

/** A steel tourer with rim brakes, every attribute settled. */
export const STEEL_TOURER: Attributes = {
  category: "touring",
  era: "1980s",
  frameMaterial: "steel",
  componentTier: "mid",
  sizeClass: "middle",
  completeness: "minor-missing",
  kept: "sheltered",
  place: "town",
  forkMaterial: "steel",
  hasCarbon: "no",
  fork: "rigid",
  steering: "quill",
  drivetrain: "derailleur",
  bottomBracket: "cup-and-cone",
  bbThread: "usual",
  cranks: "square-taper",
  hub: "cup-and-cone",
  barMaterial: "aluminium",
  barType: "drop",
  rimMaterial: "aluminium",
  brakeType: "rim-caliper",
  postMaterial: "aluminium",
  stepThrough: "no",
  fixedGear: "no",
};

/** Factors that shift nothing: every check keeps its prior whatever is seen. */
export const NO_LINKS: HistoryTable = {
  scale: 2.5,
  factors: FACTORS.map((id) => ({
    id,
    name: `Some ${id}`,
    chance: { indoors: 0.2, sheltered: 0.4, outdoors: 0.7 },
  })),
  loadings: [],
};

export const SMALL_TABLES: InspectionTables = {
  checks: SMALL_CHECKS,
  priors: SMALL_CHECKS.flatMap(({ id, levels }) =>
    ERAS.flatMap((era) =>
      KEPT.map((kept) => ({
        check: id,
        era,
        kept,
        probabilities: levels.length === 2 ? [0.98, 0.02] : [0.7, 0.2, 0.1],
      })),
    ),
  ),
  priorModifiers: [
    {
      check: "fork",
      fromLevel: "poor",
      when: [{ attribute: "frameMaterial", isOneOf: ["aluminium"] }],
      odds: 1.5,
    },
    { check: "fork", fromLevel: "bad", when: [{ attribute: "category", isOneOf: ["bmx"] }], odds: 4 },
  ],
  acquittals: [
    { check: "brake", level: "good", acquits: ["pads"], when: [] },
    { check: "spokes", level: "good", acquits: ["string"], when: [] },
    {
      check: null,
      level: null,
      acquits: ["spacing"],
      when: [{ attribute: "completeness", isOneOf: ["complete"] }],
    },
  ],
  attributeDefaults: (Object.keys(STEEL_TOURER) as AttributeName[]).map((attribute) => ({
    attribute,
    when: [],
    value: STEEL_TOURER[attribute],
  })),
  tyreNames: TYRE_NAMES,
  history: NO_LINKS,
  symptoms: [],
};
