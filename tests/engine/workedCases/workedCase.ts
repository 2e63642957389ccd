import { ATTRIBUTE_VALUES } from "../../../worker/engine/bicycle.ts";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { appliesTo } from "../../../worker/engine/inspection/applicability.ts";
import { settleAttributes } from "../../../worker/engine/inspection/attributeDefaults.ts";
import type { DescribedAttributes } from "../../../worker/engine/inspection/find.ts";
import type { Reading } from "../../../worker/engine/inspection/observation.ts";
import { readCatalogue } from "../../../worker/tables.ts";
import cases from "./cases.json" with { type: "json" };

/** What is seen, asked or wanted otherwise than in the case as it stands. */
export interface Change {
  readonly answers?: Readonly<Record<string, string>>;
  readonly find?: Readonly<Record<string, unknown>>;
  readonly hourlyGoal?: number;
}

export interface WorkedCase {
  readonly id: string;
  readonly find: Readonly<Record<string, unknown>>;
  readonly workshop: { readonly hourlyGoal: number; readonly month: number };
  readonly answers: Readonly<Record<string, string>>;
  readonly measured: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** sound: all else that can be seen without dismantling was seen and is faultless; unknown: nobody looked. */
  readonly unlisted: "sound" | "unknown";
  readonly expect: {
    readonly course: string;
    readonly alsoAcceptable: readonly string[];
    readonly plan: readonly string[];
    readonly optional: readonly string[];
    readonly saleValue: readonly number[] | null;
    readonly moneyOut: readonly number[];
    readonly hours: readonly number[];
    readonly mustWarn: readonly string[];
    readonly forbidden: readonly string[];
    readonly stop: boolean;
  };
  readonly flips: readonly (Change & { readonly course: readonly string[] })[];
}

export const CASES = cases as unknown as readonly WorkedCase[];

export function caseOf(id: string): WorkedCase {
  return CASES.find((one) => one.id === id)!;
}

const DIMENSIONS = ["beadSeatDiameterMm", "rearSprockets", "tyreMarking"];

/** A find as a body tells it, its fields side by side, as the engine is asked for it. */
export function findAsAsked(told: object): AppraisalRequest["find"] {
  const only = (wanted: (name: string) => boolean) =>
    Object.fromEntries(Object.entries(told).filter(([name]) => wanted(name)));
  return {
    ...only((name) => !(name in ATTRIBUTE_VALUES) && !DIMENSIONS.includes(name)),
    attributes: only((name) => name in ATTRIBUTE_VALUES) as unknown as DescribedAttributes,
    dimensions: only((name) => DIMENSIONS.includes(name)),
  };
}

/** The request that a case stands for. An answer that a change replaces is no longer measured. */
export function requestOf(one: WorkedCase, change: Change = {}): AppraisalRequest {
  const find = findAsAsked({ ...one.find, ...change.find });
  const observations: Record<string, Reading> = one.unlisted === "sound" ? soundOnSight(find.attributes) : {};
  for (const [check, level] of Object.entries(one.answers)) observations[check] = { level };
  for (const [check, measured] of Object.entries(one.measured)) observations[check] = { measured };
  for (const [check, level] of Object.entries(change.answers ?? {})) observations[check] = { level };
  return {
    find,
    observations,
    workshop: { ...one.workshop, hourlyGoal: change.hourlyGoal ?? one.workshop.hourlyGoal },
  };
}

/** Every check that can be made on the spot or at the bench, at its first level. */
function soundOnSight(attributes: DescribedAttributes): Record<string, Reading> {
  const { checks, attributeDefaults } = readCatalogue().inspection;
  const settled = settleAttributes(attributes, attributeDefaults);
  const seen = checks.filter((check) => check.where !== "dismantled" && appliesTo(check, settled));
  return Object.fromEntries(seen.map(({ id, levels }) => [id, { level: levels[0]!.id }]));
}
