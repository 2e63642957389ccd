import { randomNumbers } from "../../data/scripts/randomNumbers.ts";
import type { Comparable } from "../../worker/engine/valuation/comparable.ts";
import { influences, withMoreSales } from "../../worker/engine/valuation/influence.ts";
import {
  learnFromSales,
  type ReadComparable,
  readComparables,
} from "../../worker/engine/valuation/learnFromSales.ts";
import { predict, targetRow } from "../../worker/engine/valuation/prediction.ts";
import type { SaleDescription } from "../../worker/engine/valuation/saleDescription.ts";
import { valueBand } from "../../worker/engine/valuation/valueBand.ts";
import { denseRow } from "../../worker/engine/valuation/valueBelief.ts";
import { drawMarket } from "../engine/bandCoverage/drawnMarket.ts";
import { normalEquations } from "../engine/statistics/normalEquations.ts";
import { COMPILED } from "../engine/valuation/demoModel.ts";
import type { Bench } from "./bench.ts";

const FEW = 20;
/** As many as a request may hold. */
const MANY = 5000;
const MORE = 3;

/** Every comparable described in full, as a mechanic's own sales are; and most of them in part, as others' advertisements are. */
const { find, comparables, reading } = drawMarket(COMPILED, randomNumbers(71), MANY, 1);
const inPart = drawMarket(COMPILED, randomNumbers(71), MANY).comparables;
const states: readonly SaleDescription[] = [
  find,
  { ...find, state: { kind: "does-not-ride" }, asFound: true },
  { ...find, state: { kind: "rides", condition: 0.75 } },
  { ...find, state: { kind: "rides", condition: 1 } },
];

/** What the engine does with a user's prices for one find. */
function valued(sales: readonly Comparable[]) {
  const read = readComparables(COMPILED, sales, reading);
  const belief = learnFromSales(COMPILED, read);
  return [
    states.map((state) => valueBand(predict(belief, state))),
    influences(belief, read, find),
    withMoreSales(belief, find, MORE),
  ];
}

/** Folded in, and the bands: without what each comparable did. */
function banded(sales: readonly Comparable[]) {
  const belief = learnFromSales(COMPILED, readComparables(COMPILED, sales, reading));
  return states.map((state) => valueBand(predict(belief, state)));
}

/** The bands alone, the plain way: normal equations solved afresh for the posterior, and again without each comparable. */
function naively(sales: readonly Comparable[], leavingOut: boolean) {
  const read = readComparables(COMPILED, sales, reading);
  const posterior = (rows: readonly ReadComparable[]) => normalEquations(COMPILED.initial.regression, rows);
  const { mean, covariance } = posterior(read);
  const bands = states.map((state) => {
    const x = denseRow(targetRow(COMPILED.initial, state).row, mean.length);
    const location = x.reduce((sum, value, column) => sum + value * mean[column]!, 0);
    const variance = x.reduce(
      (sum, value, i) => sum + value * x.reduce((inner, other, j) => inner + covariance[i]![j]! * other, 0),
      0,
    );
    return [location, variance];
  });
  return [bands, leavingOut ? read.map((one) => posterior(read.filter((other) => other !== one))) : []];
}

const few = comparables.slice(0, FEW);

export default {
  title:
    "comparables taken in for one find: bands of four states, the influence of each comparable, what three more would do",
  candidates: [
    { name: `naively, ${FEW}: normal equations, bands alone`, run: () => naively(few, false) },
    { name: `naively, ${FEW}: and solved again without each`, run: () => naively(few, true) },
    { name: `ours, ${FEW}: bands alone`, run: () => banded(few) },
    { name: `ours, ${FEW}`, run: () => valued(few) },
    { name: `ours, ${FEW} described in part`, run: () => valued(inPart.slice(0, FEW)) },
    { name: "ours, none", run: () => valued([]) },
    { name: `naively, ${MANY}: normal equations, bands alone`, run: () => naively(comparables, false) },
    { name: `ours, ${MANY}: bands alone`, run: () => banded(comparables) },
    { name: `ours, ${MANY}`, run: () => valued(comparables) },
    { name: `ours, ${MANY} described in part`, run: () => valued(inPart) },
  ],
  mostTimesTheFirst: { [`ours, ${FEW}`]: 1 },
} satisfies Bench;
