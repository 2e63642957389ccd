import type { AppraisalBody, Check, Observation } from "../api/types.ts";
import type { Comparable } from "../ownPrices/comparables.ts";
import type { Answers } from "./answers.ts";
import { sendableObservation } from "./reading.ts";

/**
 * The question that the answers put to the API, the job so far apart (`withSoFar` adds it). What is unknown is left out,
 * and so is what was seen on checks the catalogue does not hold (answers may be older than it).
 * @param hourlyGoal what one more hour must earn, in the currency of the answers
 */
export function bodyOf(answers: Answers, checks: readonly Check[], hourlyGoal: number): AppraisalBody {
  const {
    attributes,
    price,
    paid,
    travelMinutes,
    travelCost,
    month,
    observations,
    soFar: _,
    ...description
  } = answers;
  const purchase = { ...at({ price }), ...at({ paid }), ...at({ travelMinutes }), ...at({ travelCost }) };
  const bought = Object.keys(purchase).length === 0 ? {} : { purchase };
  const body = {
    find: { ...attributes, ...description, ...bought },
    observations: observationsOf(observations, checks),
    workshop: { hourlyGoal, ...at({ month }) },
  };
  // The words come from the catalogue or from older answers; one that the API no longer takes it refuses by name.
  return body as unknown as AppraisalBody;
}

/** What the user knows of prices, in the currency of the question. */
export interface OwnPricesSent {
  /** By part id. */
  readonly partPrices: Readonly<Record<string, number>>;
  readonly comparables: readonly Comparable[];
}

/** The same question with the user's own prices and sales in it. Without any it is left as it is. */
export function withOwnPrices(
  body: AppraisalBody,
  { partPrices, comparables }: OwnPricesSent,
): AppraisalBody {
  const priced =
    Object.keys(partPrices).length === 0 ? body : { ...body, workshop: { ...body.workshop, partPrices } };
  if (comparables.length === 0) return priced;
  // Their words were held against the catalogue; one that the API no longer takes it refuses by name.
  return { ...priced, comparables } as unknown as AppraisalBody;
}

function observationsOf(
  observations: Answers["observations"],
  checks: readonly Check[],
): Record<string, Observation> {
  const sent: Record<string, Observation> = {};
  for (const check of checks) {
    const made = observations[check.id];
    const observation = made === undefined ? null : sendableObservation(made, check);
    if (observation !== null) sent[check.id] = observation;
  }
  return sent;
}

/** The same object, or an empty one where its value is unknown. */
function at<T extends object>(field: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.values(field).some((value) => value !== undefined)
    ? (field as { [K in keyof T]?: Exclude<T[K], undefined> })
    : {};
}
