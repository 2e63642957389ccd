import type { BoughtPart, Observation, Observations, Reading } from "../api/types.ts";
import { type Answers, NO_ANSWERS } from "./answers.ts";
import { isBlank, type SoFar } from "./soFar.ts";

/**
 * Answers from what was kept in the browser, which may be older than this page, or damaged: whatever has the
 * right shape is taken, the rest left out.
 */
export function parsedAnswers(kept: unknown): Answers {
  if (!isRecord(kept)) return NO_ANSWERS;
  const numbers = [
    "rearSprockets",
    "beadSeatDiameterMm",
    "desirability",
    "originality",
    "price",
    "travelMinutes",
    "travelCost",
    "month",
  ] as const;
  const answers: Record<string, unknown> = {
    attributes: textsIn(kept.attributes),
    observations: observationsIn(kept.observations),
  };
  for (const key of numbers) if (isNumber(kept[key])) answers[key] = kept[key];
  if (typeof kept.tyreMarking === "string") answers.tyreMarking = kept.tyreMarking;
  if (typeof kept.paid === "boolean") answers.paid = kept.paid;
  const soFar = soFarIn(kept.soFar);
  if (!isBlank(soFar)) answers.soFar = soFar;
  return answers as unknown as Answers;
}

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isNumber(value: unknown): value is number {
  return typeof value === "number" && Number.isFinite(value);
}

function textsIn(value: unknown): Record<string, string> {
  if (!isRecord(value)) return {};
  return Object.fromEntries(
    Object.entries(value).filter((entry): entry is [string, string] => typeof entry[1] === "string"),
  );
}

/** Amounts below nought were never entered: they are left out with the rest. */
const isAmount = (value: unknown): value is number => isNumber(value) && value >= 0;

function soFarIn(value: unknown): SoFar {
  if (!isRecord(value)) return { done: [], bought: [] };
  const done = Array.isArray(value.done)
    ? value.done.filter((id) => typeof id === "string" && id !== "")
    : [];
  const bought = Array.isArray(value.bought) ? value.bought.flatMap(boughtIn) : [];
  return {
    ...(isAmount(value.money) ? { money: value.money } : {}),
    ...(isAmount(value.minutes) ? { minutes: value.minutes } : {}),
    done: [...new Set<string>(done)],
    bought,
  };
}

function boughtIn(value: unknown): BoughtPart[] {
  if (!isRecord(value) || typeof value.part !== "string" || value.part === "") return [];
  const quantity = isAmount(value.quantity) && value.quantity > 0 ? value.quantity : 1;
  return [{ part: value.part, quantity, reuseValue: isAmount(value.reuseValue) ? value.reuseValue : 0 }];
}

function observationsIn(value: unknown): Observations {
  if (!isRecord(value)) return {};
  const found: Record<string, Observation> = {};
  for (const [check, observation] of Object.entries(value)) {
    const read = observationIn(observation);
    if (read !== null) found[check] = read;
  }
  return found;
}

function observationIn(value: unknown): Observation | null {
  if (!isRecord(value)) return null;
  if (!("front" in value) && !("rear" in value)) return readingIn(value);
  const front = readingIn(value.front);
  const rear = readingIn(value.rear);
  if (front === null && rear === null) return null;
  return { ...(front === null ? {} : { front }), ...(rear === null ? {} : { rear }) };
}

function readingIn(value: unknown): Reading | null {
  if (!isRecord(value)) return null;
  const reading: { level?: string; measured?: Record<string, number>; flags?: string[] } = {};
  if (typeof value.level === "string") reading.level = value.level;
  if (isRecord(value.measured)) {
    reading.measured = Object.fromEntries(
      Object.entries(value.measured).filter((entry): entry is [string, number] => isNumber(entry[1])),
    );
  }
  if (Array.isArray(value.flags)) reading.flags = value.flags.filter((flag) => typeof flag === "string");
  return Object.keys(reading).length === 0 ? null : reading;
}
