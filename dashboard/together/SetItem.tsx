import type { Objective } from "../api/types.ts";
import { ownership } from "../finds/ownership.ts";
import { CourseName } from "../signs/CourseSign.tsx";
import { rate } from "../words/money.ts";
import { rateRange } from "../words/range.ts";
import { whyLeft } from "../words/togetherLeft.ts";
import { takesUp } from "../words/togetherPlanes.ts";
import { Hold } from "./Hold.tsx";
import { isOpen, type SetRow } from "./setRows.ts";

interface SetItemProps {
  readonly row: SetRow;
  readonly goal: number;
  readonly objective: Objective;
  readonly currency: string;
}

/** A find with its course, what an hour earns, what it uses, and whether it is held. */
export function SetItem({ row, goal, objective, currency }: SetItemProps) {
  const { find, shown, number, chosen, held, compared } = row;
  const { rate: earned, p10, p90 } = shown.marginPerHour;
  const why = chosen ? null : whyLeft(row, objective, goal, currency);
  return (
    <li class="setitem">
      <div class="setname">
        <span class="setnumber" aria-hidden="true">
          {number}
        </span>
        <div>
          <a href={`/finds/${encodeURIComponent(find.id)}`}>{find.name}</a>{" "}
          <span class="tag">{ownership(find)}</span>
          <div class="sub">
            <CourseName course={shown.course} />
            <span>{takesUp(shown.hours.mean, shown.cashNeeded, currency)}</span>
          </div>
          {why !== null && <p class="small">{why}</p>}
        </div>
      </div>
      <div class="setrate">
        <span class="num">
          {rate(earned, currency)}
          <small>/h</small>
        </span>
        <div class="rng">{rateRange(p10, p90, currency)}</div>
      </div>
      <Hold find={find} held={held} open={compared.courses.filter(isOpen).map(({ course }) => course)} />
    </li>
  );
}
