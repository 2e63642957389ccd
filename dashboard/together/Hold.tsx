import { useId } from "preact/hooks";
import type { CourseId } from "../api/types.ts";
import { holdTo } from "../state/set.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { SET_FREE, SET_LEAVE_ANYWAY } from "../words/setTexts.ts";
import { heldTo, inAnyCase } from "../words/togetherSet.ts";

interface HoldProps {
  readonly find: { readonly id: string; readonly name: string };
  readonly held: CourseId | null;
  /** Courses that are open, beside leaving. */
  readonly open: readonly CourseId[];
}

/** Whether a find may be chosen freely, takes a course in any case, or is left in any case. */
export function Hold({ find, held, open }: HoldProps) {
  const id = useId();
  // A course that has closed since stays in the list, so that it can be seen and let go.
  const courses = held === null || held === "leave" || open.includes(held) ? open : [...open, held];
  return (
    <div class="field hold">
      <label for={id} class="sr">
        {heldTo(find.name)}
      </label>
      <select
        id={id}
        value={held ?? ""}
        onChange={({ currentTarget: { value } }) =>
          holdTo(find.id, value === "" ? null : (value as CourseId))
        }
      >
        <option value="">{SET_FREE}</option>
        {courses.map((course) => (
          <option key={course} value={course}>
            {inAnyCase(COURSE_WORDS[course].name)}
          </option>
        ))}
        <option value="leave">{SET_LEAVE_ANYWAY}</option>
      </select>
    </div>
  );
}
