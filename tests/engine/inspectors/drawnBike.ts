import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { type OpenFind, weighFind } from "../../../worker/engine/decision/weighFind.ts";
import type { Check } from "../../../worker/engine/inspection/check.ts";
import type { Observations } from "../../../worker/engine/inspection/observation.ts";
import { isPaper } from "../../../worker/engine/service/unseenFaults.ts";
import { BOOK } from "../decision/shippedBook.ts";
import type { Chance } from "../walker/chance.ts";
import { allRequests } from "../walker/finds.ts";

/** A bike as it really is: a description, and the level of every check that applies to it. */
export interface DrawnBike {
  /** Described, its papers in order, nothing looked at. */
  readonly unseen: AppraisalRequest;
  readonly levels: ReadonlyMap<string, string>;
  /** The checks that can be made before the work begins, in the order of the catalogue. */
  readonly checks: readonly Check[];
}

const PAPERS: Observations = {
  serial: { level: "clear" },
  ownership: { level: "document" },
  recall: { level: "none" },
};

/** The invented finds and the worked cases as they are described, on offer, papers in order, nobody having looked. */
export const DESCRIPTIONS: readonly AppraisalRequest[] = allRequests()
  .map(([, request]): AppraisalRequest => {
    const { soFar: _, ...find } = request.find;
    const { price = 0 } = find.purchase ?? {};
    return {
      ...request,
      find: { ...find, purchase: { ...find.purchase, price, paid: false } },
      observations: PAPERS,
    };
  })
  .filter((request) => weighFind(request, BOOK).stop === null);

/** A bike drawn from what the engine believes of one of the descriptions: first its past, then each level in it. */
export function drawBike(chance: Chance): DrawnBike {
  const request = DESCRIPTIONS[Math.floor(chance.uniform() * DESCRIPTIONS.length)]!;
  const { inspection } = weighFind(request, BOOK) as OpenFind;
  const z = drawn(inspection.history.weights, chance);
  const levels = new Map<string, string>();
  const checks: Check[] = [];
  for (const { check: id, byClass, acquittedBy } of inspection.unseen) {
    const { check } = BOOK.inspection.byId.get(id)!;
    if (acquittedBy !== null || isPaper(check)) continue;
    const count = check.levels.length;
    levels.set(id, check.levels[drawn(byClass.subarray(z * count, (z + 1) * count), chance)]!.id);
    if (check.where !== "dismantled") checks.push(check);
  }
  return { unseen: request, levels, checks };
}

function drawn(weights: Float64Array, chance: Chance): number {
  let left = chance.uniform() * weights.reduce((sum, one) => sum + one, 0);
  for (let place = 0; place < weights.length - 1; place++) {
    left -= weights[place]!;
    if (left < 0) return place;
  }
  return weights.length - 1;
}

/** The request with some checks answered as the bike is: the rear wheel has what one of them has. */
export function lookedAt({ unseen, levels }: DrawnBike, made: Iterable<string>): AppraisalRequest {
  const observations: Record<string, Observations[string]> = { ...unseen.observations };
  for (const id of made) {
    const { check } = BOOK.inspection.byId.get(id)!;
    const level = levels.get(id)!;
    const best = check.levels[0]!.id;
    observations[id] =
      check.perWheel && level !== best ? { front: { level: best }, rear: { level } } : { level };
  }
  return { ...unseen, observations };
}
