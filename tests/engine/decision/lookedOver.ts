import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import { lookOver } from "../../../worker/engine/decision/lookOver.ts";
import { settleRequest } from "../../../worker/engine/decision/settledRequest.ts";
import { type Situation, situationOf } from "../../../worker/engine/decision/situation.ts";
import { weighCourses } from "../../../worker/engine/decision/weigh.ts";
import type { OpenCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import { appliesTo } from "../../../worker/engine/inspection/applicability.ts";
import { settleAttributes } from "../../../worker/engine/inspection/attributeDefaults.ts";
import type { DescribedAttributes, Dimensions } from "../../../worker/engine/inspection/find.ts";
import type { Observation } from "../../../worker/engine/inspection/observation.ts";
import { sumOver } from "../../../worker/engine/service/moments.ts";
import type { CourseId } from "../../../worker/engine/service/operation.ts";
import { BOOK } from "./shippedBook.ts";

export interface Found {
  readonly bike?: Partial<DescribedAttributes>;
  readonly dimensions?: Dimensions;
  readonly find?: Partial<AppraisalRequest["find"]>;
  /** A level by check, or a whole observation. Every other check that applies was made and found faultless. */
  readonly found?: Readonly<Record<string, string | Observation>>;
  /** Checks that nobody made. */
  readonly unseen?: readonly string[];
  readonly workshop?: AppraisalRequest["workshop"];
}

const STEEL_TOURER: DescribedAttributes = {
  category: "touring",
  era: "1980s",
  frameMaterial: "steel",
  componentTier: "mid",
  kept: "sheltered",
};

/** A steel tourer of the 1980s unless described otherwise, looked over from end to end and faultless but for what is told. */
export function lookedOver({
  bike,
  dimensions,
  find,
  found,
  unseen,
  workshop,
}: Found = {}): AppraisalRequest {
  const { checks, attributeDefaults } = BOOK.catalogue.inspection;
  const attributes = { ...STEEL_TOURER, ...bike };
  const settled = settleAttributes(attributes, attributeDefaults);
  const sound = checks
    .filter((check) => appliesTo(check, settled) && !unseen?.includes(check.id))
    .map(({ id, levels }) => [id, { level: levels[0]!.id }] as const);
  const told = Object.entries(found ?? {}).map(
    ([check, seen]) => [check, typeof seen === "string" ? { level: seen } : seen] as const,
  );
  return {
    find: { attributes, dimensions: dimensions ?? {}, ...find },
    observations: Object.fromEntries([...sound, ...told]),
    workshop: { hourlyGoal: 8, ...workshop },
  };
}

export function situationFor(request: AppraisalRequest): Situation {
  const { settled, inspection } = lookOver(settleRequest(request, BOOK), BOOK);
  return situationOf(settled, inspection, BOOK);
}

/** One course of a find, worked out. */
export function openedCourse(course: CourseId, found: Found = {}): OpenCourse {
  const weighed = weighCourses(situationFor(lookedOver(found))).find((one) => one.course === course)!;
  if (!weighed.open) throw new Error(`${course} is closed: ${weighed.because}`);
  return weighed;
}

/** Expected follow-up of the plan's jobs that may fail, and the chance that none of them ends the frame, each job on its own. */
export function risksOf({ plan, unknown }: OpenCourse) {
  const used = [...plan.resources].map((index) => unknown!.resources[index]!);
  return {
    money: sumOver(used, ({ contingency }) => contingency.money),
    minutes: sumOver(used, ({ contingency }) => contingency.minutes),
    frameHolds: used.reduce((holds, { endsFrame }) => holds * (1 - endsFrame), 1),
  };
}
