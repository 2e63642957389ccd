import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { postedSale } from "../../../worker/engine/selling/demand/posting.ts";
import { optimalPath } from "../../../worker/engine/selling/demand/pricePath.ts";
import { lowestOffer } from "../../../worker/engine/selling/lowestOffer.ts";
import { OffersOfWeek, type PlanUnderWay } from "../../../worker/engine/selling/offersOfWeek.ts";
import { planSale } from "../../../worker/engine/selling/planSale.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { Chance } from "../walker/chance.ts";
import { anyTerms, posting, type Terms } from "./anyPosting.ts";

const OPENING_BELOW = 0.15;
const USUAL: Terms = {
  p50: 200,
  above: 1.25,
  below: 1.25,
  weeks: 8,
  arrivals: 2,
  storage: 1.5,
  quickSale: 0.5,
  fee: 0,
};

function underWay(terms: Terms, fineness = 1): PlanUnderWay {
  const sale = postedSale(posting(terms), fineness);
  return {
    sale,
    path: optimalPath(sale),
    logSeason: new Array<number>(terms.weeks + 1).fill(0),
    openingBelow: OPENING_BELOW,
  };
}

const anyWeek = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
const anyShare = fc.double({ min: 0.3, max: 0.999, noNaN: true });

describe("the news of an offer", () => {
  test("a lower offer never makes carrying on worth more", () => {
    fc.assert(
      fc.property(anyTerms, anyWeek, anyShare, anyShare, (terms, when, one, other) => {
        const plan = underWay(terms);
        const offers = new OffersOfWeek(plan, Math.floor(when * plan.path.end));
        const [low, high] = [Math.min(one, other), Math.max(one, other)].map(
          (share) => offers.hear(share * offers.asked).carryingOn,
        ) as [number, number];
        expect(low).toBeLessThanOrEqual(high + 1e-9 * Math.abs(high));
      }),
      { numRuns: 30, endOnFailure: true },
    );
  });

  test("news of a low offer never raises the lowest acceptable one", () => {
    fc.assert(
      fc.property(anyTerms, anyWeek, anyShare, (terms, when, share) => {
        const plan = underWay(terms);
        const week = Math.floor(when * plan.path.end);
        const kept = (amount: number) => amount * (1 - terms.fee);
        const lowest = lowestOffer(plan, week, kept);
        // After a refused offer one would have to bring what carrying on is worth then.
        const after = new OffersOfWeek(plan, week).hear(share * lowest).carryingOn;
        expect(after).toBeLessThanOrEqual(kept(lowest) + 1e-6 * Math.abs(kept(lowest)));
      }),
      { numRuns: 30, endOnFailure: true },
    );
  });

  test("at the lowest offer to accept, accepting and carrying on come to the same", () => {
    fc.assert(
      fc.property(anyTerms, anyWeek, (terms, when) => {
        const plan = underWay(terms);
        const week = Math.floor(when * plan.path.end);
        const kept = (amount: number) => amount * (1 - terms.fee);
        const lowest = lowestOffer(plan, week, kept);
        const offers = new OffersOfWeek(plan, week);
        fc.pre(lowest > 0.0011 * offers.asked && lowest < 0.999 * offers.asked);
        expect(kept(lowest) / offers.hear(lowest).carryingOn).toBeCloseTo(1, 5);
        expect(kept(lowest * 0.98)).toBeLessThan(offers.hear(lowest * 0.98).carryingOn);
      }),
      { numRuns: 30, endOnFailure: true },
    );
  });

  test("where the going rate is known an offer is no news, and the lowest is what carrying on is worth", () => {
    const plan = underWay({ ...USUAL, above: 1, below: 1 });
    for (const week of [0, 3, 7]) {
      const worth = plan.path.carryingOn[week]!;
      expect(new OffersOfWeek(plan, week).hear(90).carryingOn).toBeCloseTo(worth, 9);
      expect(lowestOffer(plan, week, (amount) => amount)).toBeCloseTo(worth, 4);
    }
  });

  test("is that of buyers drawn one by one: carrying on and the chance to be paid a counter", () => {
    // Buyers whose first offer lies within three of 150; the plan's figures are of 150 itself.
    const plan = underWay(USUAL, 3);
    const offers = new OffersOfWeek(plan, 0);
    const [offer, counter, halfWidth] = [150, 165, 3];
    const heard = offers.hear(offer);
    const { rates, willingness } = plan.sale;
    const chance = new Chance(5);
    const cumulative: number[] = [];
    rates.weights.reduce((sum, weight, node) => (cumulative[node] = sum + weight), 0);
    let [hits, taken, worth, square] = [0, 0, 0, 0];
    for (let draw = 0; draw < 600_000; draw++) {
      const u = chance.uniform();
      const node = cumulative.findIndex((sum) => u < sum);
      if (node < 0) continue;
      const logWilling = rates.logRates[node]! + willingness.logCentre + willingness.logSd * chance.normal();
      if (logWilling >= Math.log(offers.asked)) continue;
      const opening = Math.exp(logWilling + OPENING_BELOW * Math.log(chance.uniform()));
      if (Math.abs(opening - offer) > halfWidth) continue;
      hits++;
      if (logWilling >= Math.log(counter)) taken++;
      worth += plan.path.carryingOn[node]!;
      square += plan.path.carryingOn[node]! ** 2;
    }
    const share = taken / hits;
    const mean = worth / hits;
    const sd = Math.sqrt(square / hits - mean ** 2);
    const foretold = offers.counter(heard, offer, counter, counter).chance;
    expect(hits).toBeGreaterThan(5_000);
    expect(Math.abs(mean - heard.carryingOn)).toBeLessThan((4 * sd) / Math.sqrt(hits) + 0.02);
    expect(Math.abs(share - foretold)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / hits) + 0.005);
  });
});

describe("what to answer", () => {
  const value = { p10: 160, p50: 200, p90: 244 };
  const answered = (amount: number, week: number, market = {}) =>
    planSale({ subject: { value, currency: undefined }, market, offer: { amount, week } }, BOOK);

  test("enough is accepted, and only that; a counter is a written amount above the offer that is worth more than carrying on", () => {
    for (const week of [1, 4, 9])
      for (let amount = 60; amount <= 240; amount += 12) {
        const { offer, path } = answered(amount, week);
        expect(offer!.answer === "accept").toBe(amount >= path[week - 1]!.lowestOffer);
        if (offer!.answer !== "counter") continue;
        expect(offer!.counter! % 5).toBe(0);
        expect(offer!.counter!).toBeGreaterThan(Math.max(amount, offer!.carryingOn));
        expect(offer!.counterChance!).toBeGreaterThanOrEqual(BOOK.catalogue.selling.offers.leastChance);
      }
  });

  test("where little is known of the going rate too: what is accepted leaves as much as carrying on, and nothing else does", () => {
    const kept = (amount: number, { rate, fixed } = { rate: 0, fixed: 0 }) => amount * (1 - rate) - fixed;
    for (const wide of [
      { p10: 50, p50: 100, p90: 200 },
      { p10: 40, p50: 100, p90: 250 },
    ])
      for (const fee of [undefined, { rate: 0.1, fixed: 2 }])
        for (const week of [1, 6])
          for (const amount of [8, 15, 30, 60, 90, 120, 170, 210]) {
            const { offer } = planSale(
              { subject: { value: wide, currency: undefined }, market: { fee }, offer: { amount, week } },
              BOOK,
            );
            const gain = kept(amount, fee) - offer!.carryingOn;
            if (Math.abs(gain) > 1e-3)
              expect(offer!.answer === "accept", JSON.stringify({ wide, fee, week, amount, gain })).toBe(
                gain > 0,
              );
          }
  });

  test("the reason sets what is left after fees against carrying on", () => {
    const fee = { rate: 0.2, fixed: 5 };
    const low = answered(100, 1, { fee }).offer!;
    expect(low.answer).not.toBe("accept");
    expect(low.carryingOn).toBeGreaterThan(75);
    expect(low.reason).toContain(
      `${Math.round(low.carryingOn)} EUR after this offer, more than the 75 EUR left of it after fees`,
    );
    const high = answered(300, 1, { fee }).offer!;
    expect(high.answer).toBe("accept");
    expect(high.reason).toContain("235 EUR left of it after fees is not less");
    expect(answered(300, 1).offer!.reason).toContain("300 EUR in hand is not less");
  });

  test("the going rate falls with a low offer, and without an offer's help by weeks gone by alone", () => {
    const [low, middling] = [80, 140].map((amount) => answered(amount, 3).offer!.goingRate) as [
      typeof value,
      typeof value,
    ];
    expect(low.p50).toBeLessThan(middling.p50);
    const later = answered(140, 10).offer!.goingRate;
    expect(later.p50).toBeLessThan(middling.p50);
    for (const { p10, p50, p90 } of [low, middling, later]) {
      expect(p10).toBeLessThan(p50);
      expect(p50).toBeLessThan(p90);
    }
  });

  test("haggling moves the price asked and nothing in hand", () => {
    const firm = answered(150, 2, { haggling: 0 });
    const usual = answered(150, 2, { haggling: 0.1 });
    expect(firm.listPrice).toBeLessThan(usual.listPrice);
    expect(firm.worth / usual.worth).toBeCloseTo(1, 2);
    expect(firm.path[1]!.lowestOffer / usual.path[1]!.lowestOffer).toBeCloseTo(1, 1);
  });
});
