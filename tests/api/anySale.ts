import fc from "fast-check";
import type { SellingBody } from "../../worker/api/types.ts";
import { anyRequest } from "./anyRequest.ts";

const price = fc.oneof(fc.double({ min: 0.01, max: 1e9, noNaN: true }), fc.integer({ min: 1, max: 2000 }));
const money = fc.oneof(
  fc.constant(0),
  fc.integer({ min: 0, max: 500 }),
  fc.double({ min: 0, max: 1e9, noNaN: true }),
);
const share = fc.double({ min: 0, max: 0.9, noNaN: true });

/** A figure that goes with the others in most requests, so that not nearly all are refused, and any at all in some. */
const mostly = (usual: fc.Arbitrary<number>, any: fc.Arbitrary<number>) =>
  fc.oneof({ arbitrary: usual, weight: 5 }, { arbitrary: any, weight: 1 });

/** Beyond ten in all, p90 over p10, a band is refused. */
const ratio = mostly(
  fc.double({ min: 1, max: 3.1, noNaN: true }),
  fc.double({ min: 1, max: 9, noNaN: true }),
);
const band = fc
  .record({ p50: price, below: ratio, above: ratio })
  .map(({ p50, below, above }) => ({ p10: p50 / below, p50, p90: p50 * above }));

const week = fc.integer({ min: 1, max: 20 });

const terms = {
  market: fc.record(
    {
      arrivalsPerWeek: fc.double({ min: 0.01, max: 100, noNaN: true }),
      weeks: mostly(fc.integer({ min: 4, max: 20 }), week),
      storagePerWeek: money,
      fallback: money,
      haggling: share,
      fee: fc.record({ rate: share, fixed: money }, { requiredKeys: [] }),
      month: fc.integer({ min: 1, max: 12 }),
    },
    { requiredKeys: [] },
  ),
  offer: fc.oneof(
    fc.constant(null),
    fc.record({ amount: price, week: mostly(fc.integer({ min: 1, max: 4 }), week) }),
  ),
};

const ofValue = fc.record({ ...terms, value: band }, { requiredKeys: ["value"] });
const ofFind = fc
  .record({
    sale: fc.record(
      { ...terms, state: fc.constantFrom("asFound", "madeSafe", "restored") },
      { requiredKeys: [] },
    ),
    find: anyRequest,
  })
  .map(({ sale, find }) => ({ ...find, ...sale }));

/** A request for a selling plan whose fields are right, each on its own. */
export const anySale = fc.oneof(ofValue, ofFind) as fc.Arbitrary<SellingBody>;
