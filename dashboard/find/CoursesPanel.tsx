import { useCallback, useMemo } from "preact/hooks";
import type { Appraisal, CourseOutcome } from "../api/types.ts";
import { Axis } from "../charts/Axis.tsx";
import type { DotsSettings } from "../charts/dots.ts";
import { PlotLayer } from "../charts/PlotLayer.tsx";
import type { Place, Telling } from "../charts/place.ts";
import { createDotsChart } from "../charts/rowCharts.ts";
import { percent, scaleOver } from "../charts/scale.ts";
import { TableDetails } from "../parts/TableDetails.tsx";
import { COURSE_PATH, COURSE_TOKEN } from "../signs/shapes.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { changeWords, missWords } from "../words/courseFacts.ts";
import {
  COURSES_HEAD,
  closedWords,
  coursesSentence,
  MARGIN_BY_COURSE,
  marginLines,
  NOT_OPEN,
  RULED_OUT,
} from "../words/findCourses.ts";
import { FIND_DOTS } from "../words/findPanels.ts";
import { money, rate } from "../words/money.ts";
import { between, moneyRange } from "../words/range.ts";
import { bareHours, hours } from "../words/time.ts";
import { coursesTitle, lossWords } from "../words/titles.ts";
import { CourseRow } from "./CourseRow.tsx";

/** Margin by course: 20 dots each, 1 dot = 1 outcome in 20. */
export function CoursesPanel({
  appraisal,
  goal,
  dimmed,
}: {
  appraisal: Appraisal;
  goal: number;
  dimmed: boolean;
}) {
  const { courses: all, currency, decision } = appraisal;
  const courses = useMemo(() => all.filter(({ margin }) => margin !== null), [all]);
  const scale = useMemo(() => {
    const margins = courses.flatMap(({ margin }) => margin?.twentieths ?? []);
    return scaleOver(Math.min(0, ...margins), Math.max(0, ...margins), innerWidth < 600 ? 4 : 8);
  }, [courses]);
  const settings = useCallback(
    (place: Place, active: number | null): DotsSettings => ({
      rows: courses.map(({ course, margin }) => ({
        values: course === "leave" ? [] : (margin?.twentieths ?? []),
        single: course === "leave" && margin !== null ? { at: margin.mean, sign: COURSE_PATH.leave } : null,
        token: COURSE_TOKEN[course],
      })),
      strips: place.strips,
      scale,
      active,
      width: place.width,
      height: place.height,
    }),
    [courses, scale],
  );
  const explaining = courses.find((course) => changeWords(course, currency) !== null);
  const title = coursesTitle(courses, decision.course, goal, currency);
  return (
    <section class="panel" aria-labelledby="courses-title">
      <h2 id="courses-title">{title}</h2>
      <p class="small">{FIND_DOTS}</p>
      <div class={dimmed ? "plotbox dim" : "plotbox"}>
        <ol class="courses">
          {courses.map((course) => (
            <CourseRow
              key={course.course}
              course={course}
              appraisal={appraisal}
              goal={goal}
              explains={course === explaining}
            />
          ))}
        </ol>
        <PlotLayer
          label={coursesSentence(title, courses, currency)}
          create={createDotsChart}
          settings={settings}
          tellings={courses.map((course) =>
            telling(course, goal, currency, percent(course.margin?.mean ?? 0, scale)),
          )}
        />
      </div>
      <Axis scale={scale} say={(value) => money(value, currency)} />
      <Closed courses={all} />
      <TableDetails
        caption={MARGIN_BY_COURSE}
        head={COURSES_HEAD}
        rows={all.map((course) => [
          COURSE_WORDS[course.course].name,
          course.margin === null ? NOT_OPEN : money(course.margin.mean, currency),
          course.margin === null ? "" : moneyRange(course.margin.p10, course.margin.p90, currency),
          course.hours === null ? "" : hours(course.hours.mean),
          course.hours === null ? "" : between(bareHours(course.hours.p10), bareHours(course.hours.p90)),
          course.marginPerHour === null ? "" : rate(course.marginPerHour.rate, currency),
          course.margin === null || course.course === "leave" ? "" : lossWords(course),
          missWords(course, goal, currency),
        ])}
      />
    </section>
  );
}

/** Courses that are not open, those closed by the same reason together. */
function Closed({ courses }: { courses: readonly CourseOutcome[] }) {
  const shut = courses.filter(({ margin }) => margin === null);
  const reasons = [...new Set(shut.map(({ unavailableBecause }) => unavailableBecause ?? RULED_OUT))];
  if (shut.length === 0) return null;
  return (
    <ul class="bullets">
      {reasons.map((reason) => {
        const closed = shut.filter(({ unavailableBecause = RULED_OUT }) => unavailableBecause === reason);
        return <li key={reason}>{closedWords(closed, reason)}</li>;
      })}
    </ul>
  );
}

function telling(course: CourseOutcome, goal: number, currency: string, at: number): Telling | null {
  if (course.margin === null) return null;
  return {
    title: COURSE_WORDS[course.course].name,
    lines: [
      ...marginLines(course.margin, currency),
      ...(course.course === "leave" ? [] : [lossWords(course), missWords(course, goal, currency)]),
    ],
    at,
  };
}
