import type { CourseId } from "../api/types.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { COURSE_PATH, COURSE_TOKEN } from "./shapes.ts";

/** The sign of a course: its shape in its colour. The name stands beside it. */
export function CourseSign({ course }: { course: CourseId }) {
  return (
    <svg
      class="coursesign"
      viewBox="-9 -9 18 18"
      aria-hidden="true"
      style={{ color: `var(${COURSE_TOKEN[course]})` }}
    >
      <path d={COURSE_PATH[course]} fill="currentColor" />
    </svg>
  );
}

/** Sign and name of a course. */
export function CourseName({ course }: { course: CourseId }) {
  return (
    <span class="course">
      <CourseSign course={course} />
      {COURSE_WORDS[course].name}
    </span>
  );
}
