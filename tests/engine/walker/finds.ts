import demo from "../../../data/demo-finds.json" with { type: "json" };
import type { AppraisalRequest } from "../../../worker/engine/decision/appraisalRequest.ts";
import type { OpenCourse } from "../../../worker/engine/decision/weighedCourse.ts";
import { type OpenFind, weighFind } from "../../../worker/engine/decision/weighFind.ts";
import { BOOK } from "../decision/shippedBook.ts";
import { CASES, findAsAsked, requestOf } from "../workedCases/workedCase.ts";

/** An invented find as the engine is asked for it. */
function requestOfDemo({ appraisal: { find, ...rest } }: (typeof demo.finds)[number]): AppraisalRequest {
  return { ...rest, find: findAsAsked(find) } as unknown as AppraisalRequest;
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
