import { bestPath } from "../../worker/engine/selling/demand/bestPath.ts";
import { curveOfBand } from "../../worker/engine/selling/demand/goingRates.ts";
import { type Posting, postedSale } from "../../worker/engine/selling/demand/posting.ts";
import { planSale } from "../../worker/engine/selling/planSale.ts";
import { BOOK } from "../engine/decision/shippedBook.ts";
import { bestOfEveryPath } from "../engine/selling/everyPath.ts";
import type { FloorBench } from "./bench.ts";

const WEEKS = 26;
const FLOOR_MILLISECONDS = 5;
const RUNS = 200;
const WARM_UP = 50;
const VALUE = { p10: 160, p50: 200, p90: 244 };
/** A grid search on so few weeks, with prices so close that it brings what ours does to this share. */
const RIVAL = { weeks: 4, shortBy: 1e-3, most: 64, floor: 50 };

const posting = (weeks: number): Posting => ({
  curves: [curveOfBand(VALUE)],
  usualHaggling: 0.1,
  willingness: BOOK.catalogue.selling.willingness,
  season: Array.from({ length: weeks + 1 }, () => ({ arrivals: 1.9, logRate: 0 })),
  terms: { storagePerWeek: 1.5, fee: { rate: 0, fixed: 0 }, discountPerWeek: 0.001 },
  fallback: { share: 0.54, amount: null },
});

/** Processor time of one run in milliseconds, the mean of many after some that do not count: what else the machine does counts little. */
function timed(work: () => unknown, runs = RUNS, warmUp = WARM_UP): number {
  for (let run = 0; run < warmUp; run++) work();
  const start = process.cpuUsage();
  for (let run = 0; run < runs; run++) work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000 / runs;
}

/** The coarsest grid whose best path is worth what ours is but for a thousandth, and the time it takes. */
function gridSearch(worth: number): { readonly prices: number; readonly milliseconds: number } {
  const sale = postedSale(posting(RIVAL.weeks));
  const { lowest, highest } = sale.range;
  for (let prices = 4; prices <= RIVAL.most; prices += 2) {
    const grid = Array.from(
      { length: prices },
      (_, at) => lowest * (highest / lowest) ** (at / (prices - 1)),
    );
    let found = { worth: Number.NEGATIVE_INFINITY };
    const search = () => {
      found = bestOfEveryPath(sale, grid);
    };
    const milliseconds = timed(search, 1, 0);
    if (found.worth >= worth * (1 - RIVAL.shortBy)) return { prices, milliseconds };
  }
  return { prices: Number.NaN, milliseconds: Number.NaN };
}

export default {
  title: "a selling plan: prices week by week over an uncertain going rate",
  run: (print) => {
    const plan = (month?: number) => () =>
      planSale(
        { subject: { value: VALUE, currency: undefined }, market: { weeks: WEEKS, month }, offer: null },
        BOOK,
      );
    const whole = timed(plan());
    print(
      `${WEEKS} weeks, the whole answer with lowest offers: ${whole.toFixed(2)} ms of processor time (mean of ${RUNS}; floor ${FLOOR_MILLISECONDS} ms); the path alone ${timed(() => bestPath(posting(WEEKS))).toFixed(2)} ms`,
    );
    print(
      `with a month, eleven later ones weighed against it: ${timed(plan(11)).toFixed(2)} ms listed in November, ${timed(plan(5)).toFixed(2)} ms in May`,
    );
    const { path } = bestPath(posting(RIVAL.weeks));
    const ours = timed(() => bestPath(posting(RIVAL.weeks)));
    const grid = gridSearch(path.worth);
    const ratio = grid.milliseconds / ours;
    print(
      `${RIVAL.weeks} weeks: ours ${ours.toFixed(2)} ms; every path on a grid of ${grid.prices} prices, the coarsest that comes within ${100 * RIVAL.shortBy} % of ours, ${grid.milliseconds.toFixed(0)} ms: ${ratio.toFixed(0)} times as long (floor ${RIVAL.floor})`,
    );
    return whole < FLOOR_MILLISECONDS && ratio >= RIVAL.floor;
  },
} satisfies FloorBench;
