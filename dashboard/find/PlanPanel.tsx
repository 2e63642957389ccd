import type { Appraisal, CourseId, CourseOutcome, ReportedPlan } from "../api/types.ts";
import { planInSight, plannedCourses } from "../courses/planInSight.ts";
import { CourseSign } from "../signs/CourseSign.tsx";
import { listed } from "../words/count.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { sentence } from "../words/plain.ts";
import { LEFT_AS_THEY_ARE, setAside } from "../words/plan.ts";
import { PLAN_KEY, PLAN_OF, planRange } from "../words/planPanel.ts";
import { planTitle } from "../words/titles.ts";
import type { Names } from "./names.ts";
import { PlanSteps } from "./PlanSteps.tsx";
import { ShoppingList } from "./ShoppingList.tsx";

interface PlanPanelProps {
  readonly appraisal: Appraisal;
  readonly names: Names;
  /** The course whose plan was asked for; null for the one decided. */
  readonly picked: CourseId | null;
  readonly onPick: (course: CourseId) => void;
  /** Parts that were worked out with a price of the user's own. */
  readonly ownParts: ReadonlySet<string>;
}

/** The work of a course in working order: hours, money, torque, and the check that proves it done. */
export function PlanPanel({ appraisal, names, picked, onPick, ownParts }: PlanPanelProps) {
  const planned = plannedCourses(appraisal);
  const course = planInSight(appraisal, picked);
  if (course === undefined || course.plan === null) return null;
  const { plan } = course;
  const { currency } = appraisal;
  return (
    <section class="panel" aria-labelledby="plan-title">
      <h2 id="plan-title">{planTitle(course, currency)}</h2>
      <p class="small">
        {planRange(plan, currency)} {PLAN_KEY}
      </p>
      {planned.length > 1 && <PlanPicks planned={planned} chosen={course.course} onPick={onPick} />}
      <PlanSteps plan={plan} names={names} currency={currency} />
      <Rest plan={plan} currency={currency} names={names} />
      <ShoppingList course={course} plan={plan} currency={currency} ownParts={ownParts} />
    </section>
  );
}

/** Which course's plan is shown. */
export function PlanPicks(props: {
  planned: readonly CourseOutcome[];
  chosen: CourseId;
  onPick: (course: CourseId) => void;
}) {
  return (
    <fieldset class="plans">
      <legend class="sr">{PLAN_OF}</legend>
      {props.planned.map(({ course }) => (
        <label key={course} class="pick">
          <input
            type="radio"
            name="plan"
            checked={course === props.chosen}
            onChange={() => props.onPick(course)}
          />
          <span>
            <CourseSign course={course} />
            {COURSE_WORDS[course].name}
          </span>
        </label>
      ))}
    </fieldset>
  );
}

/** What the shown plan leaves out: the allowance for the unseen, and faults told to the buyer. */
function Rest({ plan, currency, names }: { plan: ReportedPlan; currency: string; names: Names }) {
  const { allowance, disclosed } = plan;
  const aside = setAside(allowance, currency);
  return (
    <>
      {aside !== null && <p class="small">{aside}</p>}
      {disclosed.length > 0 && (
        <p class="small">
          <b>{LEFT_AS_THEY_ARE}</b> {sentence(listed(disclosed.map(names.check)))}
        </p>
      )}
    </>
  );
}
