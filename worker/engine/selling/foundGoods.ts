import type { AppraisalRequest } from "../decision/appraisalRequest.ts";
import type { Book } from "../decision/book.ts";
import { bestCourse } from "../decision/choice.ts";
import { atLevel } from "../decision/pricing.ts";
import { readinessOf } from "../decision/readiness.ts";
import type { Situation } from "../decision/situation.ts";
import { finishedSale } from "../decision/stateValues.ts";
import type { WeighedCourse } from "../decision/weighedCourse.ts";
import { type OpenFind, weighFind } from "../decision/weighFind.ts";
import { DomainError } from "../domainError.ts";
import type { Money } from "../quantity.ts";
import type { CourseId } from "../service/operation.ts";
import type { GoingRate } from "../valuation/goingRate.ts";
import { predict } from "../valuation/prediction.ts";
import { mixtureBand } from "../valuation/valueBand.ts";
import { curveOf } from "./demand/goingRates.ts";
import { seasonsOf } from "./demand/season.ts";
import type { WholeState } from "./demand/sellingTables.ts";
import type { Goods } from "./goods.ts";

const COURSE_OF: Readonly<Record<WholeState, CourseId>> = {
  asFound: "sell-as-found",
  madeSafe: "make-safe",
  restored: "restore",
};
/** The order in which a state is taken where the decided course leads to none. */
const STATES: readonly WholeState[] = ["madeSafe", "restored", "asFound"];

/**
 * A described find as goods, in a state that its courses lead to. What may not be sold is refused, and what may not be ridden is not sold as rideable.
 * @throws DomainError with a pointer into the request
 */
export function foundGoods(request: AppraisalRequest, asked: WholeState | undefined, book: Book): Goods {
  const find = weighFind(request, book);
  if (find.stop)
    throw new DomainError(
      "out-of-domain",
      "find",
      request.find.id ?? "this one",
      `one that may be sold (${find.stop.reason.replace(/\.$/, "")})`,
      "/find",
    );
  const state = asked ?? likeliestState(find);
  const open = courseTo(state, find.courses);
  if (!open.open)
    throw new DomainError(
      "out-of-domain",
      "state",
      state,
      stateRefusal(state, open.because, find.courses),
      "/state",
    );
  const { settled, situation } = find;
  const { defaults, selling } = book.catalogue;
  const [one, other, chance] = ratesIn(state, situation, find.courses);
  const { category, sizeClass } = settled.attributes;
  return {
    currency: settled.currency,
    unconverted: settled.unconverted,
    soldAs: soldAs(state, find, book),
    band: mixtureBand(one, other, chance),
    curves: [curveOf(one, 1 - chance), curveOf(other, chance)],
    usualHaggling: defaults.haggling[state === "asFound" ? "asFound" : "rideable"],
    demand: selling.byCategory[category]! * selling.bySize[sizeClass] * selling.byState[state],
    seasons: seasonsOf(selling, settled.market.belief),
    month: settled.month,
    priceLevel: settled.priceLevel,
    fee: request.workshop?.fee ? settled.fee : null,
    parts: situation.partsClosedBecause === null ? brokenWorth(situation) : null,
  };
}

function courseTo(state: WholeState, courses: readonly WeighedCourse[]): WeighedCourse {
  return courses.find(({ course }) => course === COURSE_OF[state])!;
}

function likeliestState({ courses, situation }: OpenFind): WholeState {
  const { course } = bestCourse(courses, situation);
  const decided = STATES.find((state) => COURSE_OF[state] === course);
  return decided ?? STATES.find((state) => courseTo(state, courses).open) ?? "asFound";
}

function stateRefusal(state: WholeState, because: string, courses: readonly WeighedCourse[]): string {
  const others = STATES.filter((one) => one !== state && courseTo(one, courses).open);
  const why = `(${because.replace(/\.$/, "")})`;
  return others.length === 0
    ? `a bicycle that may be sold whole, and only its parts may be ${why}`
    : `${others.join(" or ")} ${why}`;
}

/** Going rates that the bicycle may turn out to have, with the chance of the second. */
function ratesIn(
  state: WholeState,
  situation: Situation,
  courses: readonly WeighedCourse[],
): readonly [GoingRate, GoingRate, number] {
  const { pricing, notRidingChance, settled } = situation;
  if (state === "asFound") return [pricing.asFoundRiding, pricing.asFoundNotRiding, notRidingChance];
  const sale = finishedSale(state === "madeSafe" ? "make-safe" : "restore", situation, courses)!;
  const rate = atLevel(predict(settled.market.belief, sale), settled.market.logPriceLevel);
  return [rate, rate, 0];
}

function soldAs(state: WholeState, { inspection }: OpenFind, book: Book): Goods["soldAs"] {
  const { ready, blocking, owed } = readinessOf(inspection, book);
  return { state, roadworthy: ready, blocking, owed };
}

/** Expected takings of the pieces worth listing, less the minutes to strip, list and post them at the user's goal. */
function brokenWorth({ parts, settled, fixedPlans }: Situation): Money {
  const { hourlyGoal, speedFactor } = settled.workshop;
  const plan = fixedPlans["break-for-parts"];
  const { fixed } = settled.fee;
  return (
    parts.list.takings -
    fixed -
    settled.packing -
    plan.money.mean -
    (plan.minutes.mean * speedFactor * hourlyGoal) / 60
  );
}
