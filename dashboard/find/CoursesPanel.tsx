import { useCallback, useMemo } from "preact/hooks";
import type { Appraisal, CourseOutcome } from "../api/types.ts";
import { Axis } from "../charts/Axis.tsx";
import { createDotsChart, type DotsSettings } from "../charts/dotsChart.ts";
import { PlotLayer } from "../charts/PlotLayer.tsx";
import type { Place, Telling } from "../charts/place.ts";
import { percent, scaleOver } from "../charts/scale.ts";
import { TableDetails } from "../parts/TableDetails.tsx";
import { CourseName } from "../signs/CourseSign.tsx";
import { COURSE_PATH, COURSE_TOKEN } from "../signs/shapes.ts";
import { lastHours } from "../words/addedHours.ts";
import { capital, listed } from "../words/count.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { money, rate } from "../words/money.ts";
import { sentence } from "../words/plain.ts";
import { moneyRange, rateRange } from "../words/range.ts";
import { hours } from "../words/time.ts";
import { coursesTitle, lossWords } from "../words/titles.ts";

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
  const title = coursesTitle(courses, decision.course, goal, currency);
  return (
    <section class="panel" aria-labelledby="courses-title">
      <h2 id="courses-title">{title}</h2>
      <p class="small">Margin over the whole job. Each dot is 1 outcome in 20; hatched dots lose money.</p>
      <div class={dimmed ? "plotbox dim" : "plotbox"}>
        <ol class="courses">
          {courses.map((course) => (
            <CourseRow key={course.course} course={course} appraisal={appraisal} goal={goal} />
          ))}
        </ol>
        <PlotLayer
          label={`${title}. Margin by course. ${courses.map((course) => spoken(course, currency)).join(" ")}`}
          create={createDotsChart}
          settings={settings}
          tellings={courses.map((course) =>
            telling(course, currency, percent(course.margin?.mean ?? 0, scale)),
          )}
        />
      </div>
      <Axis scale={scale} say={(value) => money(value, currency)} />
      <Closed courses={all} />
      <TableDetails
        caption="Margin by course"
        head={["Course", "Margin", "8 in 10 between", "Hours", "An hour", "Loses"]}
        rows={all.map((course) => [
          COURSE_WORDS[course.course].name,
          course.margin === null ? "not open" : money(course.margin.mean, currency),
          course.margin === null ? "" : moneyRange(course.margin.p10, course.margin.p90, currency),
          course.hours === null ? "" : hours(course.hours.mean),
          course.marginPerHour === null ? "" : rate(course.marginPerHour.rate, currency),
          course.margin === null || course.course === "leave" ? "" : lossWords(course),
        ])}
      />
    </section>
  );
}

function CourseRow({
  course,
  appraisal,
  goal,
}: {
  course: CourseOutcome;
  appraisal: Appraisal;
  goal: number;
}) {
  const { currency, decision, courses } = appraisal;
  const decided = course.course === decision.course;
  const figures = course.marginPerHour;
  return (
    <li class={decided ? "courserow best" : "courserow"}>
      <div class="coursehead">
        <CourseName course={course.course} />
        {figures !== null && (
          <span class="small nowrap">
            <b>{rate(figures.rate, currency)}</b> an hour ({rateRange(figures.p10, figures.p90, currency)})
          </span>
        )}
      </div>
      <div class="plot" />
      <p class="small">{facts(course, decided, goal, courses, currency)}</p>
    </li>
  );
}

/** Courses that are not open, those closed by the same reason together. */
function Closed({ courses }: { courses: readonly CourseOutcome[] }) {
  const shut = courses.filter(({ margin }) => margin === null);
  const reasons = [
    ...new Set(shut.map(({ unavailableBecause }) => unavailableBecause ?? "ruled out by what was found")),
  ];
  if (shut.length === 0) return null;
  return (
    <ul class="bullets">
      {reasons.map((reason) => {
        const names = shut.filter(
          ({ unavailableBecause = "ruled out by what was found" }) => unavailableBecause === reason,
        );
        const verb = names.length === 1 ? "is" : "are";
        const who = capital(listed(names.map(({ course }) => COURSE_WORDS[course].doing)));
        return <li key={reason}>{sentence(`${who} ${verb} not open. ${reason}`)}</li>;
      })}
    </ul>
  );
}

function facts(
  course: CourseOutcome,
  decided: boolean,
  goal: number,
  courses: readonly CourseOutcome[],
  currency: string,
): string {
  if (course.margin === null) return "";
  const worked =
    course.hours === null || course.hours.mean < 0.05 ? "no hours" : `for ${hours(course.hours.mean)}`;
  const margin = `${money(course.margin.mean, currency)} ${worked}`;
  return [
    margin,
    course.course === "leave" ? "" : lossWords(course),
    lastHours(course, courses, goal, currency) ?? "",
    decided ? "best after paying for your time" : "",
  ]
    .filter((part) => part !== "")
    .join(" \u00b7 ");
}

function telling(course: CourseOutcome, currency: string, at: number): Telling | null {
  if (course.margin === null) return null;
  return {
    title: COURSE_WORDS[course.course].name,
    lines: [
      `${money(course.margin.mean, currency)} on average`,
      `8 in 10 between ${moneyRange(course.margin.p10, course.margin.p90, currency)}`,
      ...(course.course === "leave" ? [] : [lossWords(course)]),
    ],
    at,
  };
}

function spoken(course: CourseOutcome, currency: string): string {
  const { name } = COURSE_WORDS[course.course];
  return course.margin === null ? `${name}: not open.` : `${name}: ${money(course.margin.mean, currency)}.`;
}
