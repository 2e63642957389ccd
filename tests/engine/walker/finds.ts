import demo from "../../../data/demo-finds.json" with { type: "json" };
import { ATTRIBUTE_VALUES } from "../../../worker/engine/bicycle.ts";
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import type { OpenCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import { type OpenFind, weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { CASES, requestOf } from "../workedCases/workedCase.ts";

const DIMENSIONS = ["beadSeatDiameterMm", "rearSprockets", "tyreMarking"];

/** An invented find as the engine is asked for it. */
function requestOfDemo({ appraisal }: (typeof demo.finds)[number]): AppraisalRequest {
  const { find, ...rest } = appraisal;
  const told = Object.entries(find);
  const only = (wanted: (name: string) => boolean) =>
    Object.fromEntries(told.filter(([name]) => wanted(name)));
  return {
    ...rest,
    find: {
      ...only((name) => !(name in ATTRIBUTE_VALUES) && !DIMENSIONS.includes(name)),
      attributes: only((name) => name in ATTRIBUTE_VALUES),
      dimensions: only((name) => DIMENSIONS.includes(name)),
    },
  } as unknown as AppraisalRequest;
}

/** A course to be played. */
export interface PlayedCourse {
  readonly name: string;
  readonly find: OpenFind;
  readonly course: OpenCourse;
}

/** The invented finds and the worked cases, by id. */
export function allRequests(): readonly (readonly [id: string, request: AppraisalRequest])[] {
  return [
    ...demo.finds.map((one) => [one.id, requestOfDemo(one)] as const),
    ...CASES.map((one) => [one.id, requestOf(one)] as const),
  ];
}

/** Every open course but leaving, of every invented find and worked case that nothing stops. */
export function playedCourses(): readonly PlayedCourse[] {
  return allRequests().flatMap(([id, request]) => {
    const find = weighFind(request, BOOK);
    if (find.stop !== null) return [];
    return find.courses.flatMap((course) =>
      course.open && course.course !== "leave" ? [{ name: `${id} ${course.course}`, find, course }] : [],
    );
  });
}
