import type { Appraisal, CourseOutcome } from "../api/types.ts";
import { Explained } from "../parts/Term.tsx";
import { CourseName } from "../signs/CourseSign.tsx";
import { changeWords, courseFacts } from "../words/courseFacts.ts";
import { anHourWithin } from "../words/findCourses.ts";
import { rate } from "../words/money.ts";

interface CourseRowProps {
  readonly course: CourseOutcome;
  readonly appraisal: Appraisal;
  readonly goal: number;
  /** The first that says what changing course later is worth: there the word is explained. */
  readonly explains: boolean;
}

/** One course: its name, rate and range, the place of its dots, and what they come to. */
export function CourseRow({ course, appraisal, goal, explains }: CourseRowProps) {
  const { currency, decision, courses } = appraisal;
  const decided = course.course === decision.course;
  const figures = course.marginPerHour;
  const change = changeWords(course, currency);
  return (
    <li class={decided ? "courserow best" : "courserow"}>
      <div class="coursehead">
        <CourseName course={course.course} />
        {figures !== null && (
          <span class="small nowrap">
            <b>{rate(figures.rate, currency)}</b> {anHourWithin(figures, currency)}
          </span>
        )}
      </div>
      <div class="plot" />
      <p class="small">{courseFacts(course, courses, decided, goal, currency)}</p>
      {change !== null && (
        <p class="small">
          {explains ? <Explained text={change} words={/change course/} of="right-to-change" /> : change}
        </p>
      )}
    </li>
  );
}
