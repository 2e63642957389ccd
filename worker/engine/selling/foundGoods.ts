import type { AppraisalRequest } from "../decision/appraisalRequest.ts";
import type { Book } from "../decision/book.ts";
import { bestCourse } from "../decision/choice.ts";
import { readinessOf } from "../decision/readiness.ts";
import { STATE_OF, saleOutlook } from "../decision/saleOutlook.ts";
import type { WeighedCourse } from "../decision/weighedCourse.ts";
import { type OpenFind, weighFind } from "../decision/weighFind.ts";
import { DomainError } from "../domainError.ts";
import { mixtureBand } from "../valuation/valueBand.ts";
import { curveOf } from "./demand/goingRates.ts";
import { seasonsOf } from "./demand/season.ts";
import type { WholeState } from "./demand/sellingTables.ts";
import { demandOf } from "./demand/wholeSale.ts";
import type { Goods } from "./goods.ts";

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
  const { selling } = book.catalogue;
  const { one, other, chance, usualHaggling, parts } = saleOutlook(state, situation, find.courses)!;
  return {
    currency: settled.currency,
    unconverted: settled.unconverted,
    soldAs: soldAs(state, find, book),
    band: mixtureBand(one, other, chance),
    curves: [curveOf(one, 1 - chance), curveOf(other, chance)],
    usualHaggling,
    demand: demandOf(selling, settled.attributes, state),
    seasons: seasonsOf(selling, settled.market.belief),
    month: settled.month,
    priceLevel: settled.priceLevel,
    fee: request.workshop?.fee ? settled.fee : null,
    parts,
  };
}

function courseTo(state: WholeState, courses: readonly WeighedCourse[]): WeighedCourse {
  return courses.find(({ course }) => STATE_OF[course] === state)!;
}

function likeliestState({ courses, situation }: OpenFind): WholeState {
  const { course } = bestCourse(courses, situation);
  const decided = STATES.find((state) => STATE_OF[course] === state);
  return decided ?? STATES.find((state) => courseTo(state, courses).open) ?? "asFound";
}

function stateRefusal(state: WholeState, because: string, courses: readonly WeighedCourse[]): string {
  const others = STATES.filter((one) => one !== state && courseTo(one, courses).open);
  const why = `(${because.replace(/\.$/, "")})`;
  return others.length === 0
    ? `a bicycle that may be sold whole, and only its parts may be ${why}`
    : `${others.join(" or ")} ${why}`;
}

function soldAs(state: WholeState, { inspection }: OpenFind, book: Book): Goods["soldAs"] {
  const { ready, blocking, owed } = readinessOf(inspection, book);
  return { state, roadworthy: ready, blocking, owed };
}
