import type { Reference } from "../api/types.ts";
import { FindWheel } from "../finds/FindWheel.tsx";
import { ownership } from "../finds/ownership.ts";
import { CourseName } from "../signs/CourseSign.tsx";
import { COMPARE_STOPPED } from "../words/compareTexts.ts";
import { bestOther } from "../words/marginChart.ts";
import type { Compared } from "./compared.ts";

/** The heads of the columns: how far each find was looked at, its name, and what was decided. */
export function Heads({ finds, known }: { finds: readonly Compared[]; known: Reference }) {
  return (
    <ul class="heads">
      {finds.map(({ find, row, stopped, appraisal }) => (
        <li key={find.id}>
          <FindWheel find={find} reference={known} size={40} />
          <div>
            <a href={`/finds/${encodeURIComponent(find.id)}`}>{find.name}</a>
            <div class="sub">
              {stopped ? (
                <b class="stopword">{COMPARE_STOPPED}</b>
              ) : (
                <CourseName course={appraisal.decision.course} />
              )}
              {row?.verdict === "leave" && <span>{bestOther(row.shown.course)}</span>}
              <span class="tag">{ownership(find)}</span>
            </div>
          </div>
        </li>
      ))}
    </ul>
  );
}
