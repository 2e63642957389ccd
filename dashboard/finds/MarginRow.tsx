import type { Reference } from "../api/types.ts";
import { CourseName } from "../signs/CourseSign.tsx";
import { capital } from "../words/count.ts";
import { bestOther } from "../words/marginChart.ts";
import { rate } from "../words/money.ts";
import { rateRange } from "../words/range.ts";
import { FindWheel } from "./FindWheel.tsx";
import { ownership } from "./ownership.ts";
import type { FindRow } from "./row.ts";

export function MarginRow({ row, reference }: { row: FindRow; reference: Reference }) {
  const { find, appraisal } = row;
  const { currency } = appraisal;
  return (
    <li class="row">
      <div class="name">
        <FindWheel find={find} reference={reference} />
        <div>
          <div class="title">
            <a href={`/finds/${encodeURIComponent(find.id)}`}>{find.name}</a>
            <span class="tag">{ownership(find)}</span>
          </div>
          <div class="sub">
            <CourseName course={row.verdict} />
            <span>{row.verdict === "leave" ? bestOther(row.shown.course) : find.where}</span>
          </div>
          {row.added !== null && <p class="added">{capital(row.added)}</p>}
        </div>
      </div>
      <div class="plot" />
      <div class="rate">
        <span class="num">
          {rate(row.rate, currency)}
          <small>/h</small>
        </span>
        <div class="rng">{rateRange(row.p10, row.p90, currency)}</div>
      </div>
    </li>
  );
}
