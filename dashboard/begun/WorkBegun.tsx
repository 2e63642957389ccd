import { useRef } from "preact/hooks";
import { withAnswer } from "../answers/answers.ts";
import { isBlank, NOTHING_SO_FAR, type SoFar, withDone, withSpent } from "../answers/soFar.ts";
import { type Fault, messagesAt } from "../api/fault.ts";
import type { Appraisal, CourseOutcome, Reference } from "../api/types.ts";
import type { OwnFind } from "../finds/own.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { ownFinds } from "../state/finds.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { currencySign } from "../words/money.ts";
import { begunWords, spentWords } from "../words/soFar.ts";
import { minutes } from "../words/time.ts";
import { BoughtList } from "./BoughtList.tsx";
import { jobRows } from "./rows.ts";

interface WorkBegunProps {
  /** Id of the find; the panel is for finds of one's own alone. */
  readonly id: string;
  readonly known: Reference;
  /** Null where there is none: what was told is refused, and must be mended first. */
  readonly appraisal: Appraisal | null;
  /** The course whose plan is shown. */
  readonly course: CourseOutcome | undefined;
  readonly fault: Fault | null;
}

/** The job so far: what it took, what is done and bought. The courses are compared from now on. */
export function WorkBegun(props: WorkBegunProps) {
  const own = ownFinds.all.value.find((find) => find.id === props.id);
  return own === undefined ? null : <Begun own={own} {...props} />;
}

function Begun({ own, known, appraisal, course, fault }: WorkBegunProps & { own: OwnFind }) {
  const soFar = own.answers.soFar ?? NOTHING_SO_FAR;
  const open = useRef(!isBlank(soFar));
  const change = (next: SoFar) =>
    ownFinds.put({ ...own, answers: withAnswer(own.answers, "soFar", isBlank(next) ? undefined : next) });
  const currency = appraisal?.currency ?? known.currency;
  const counted = appraisal?.soFar ?? { ...soFar, money: 0, hours: 0 };
  const spent = spentWords(counted, currency);
  return (
    <details class="panel fold begun" open={open.current}>
      <summary>
        <span class="foldname">Work begun</span>
        <span class="small">{begunWords(counted, currency)}</span>
      </summary>
      <p class="small">
        Say what is done and what it took: every course is then compared from now on. Found something?{" "}
        <a href={`/describe/${encodeURIComponent(own.id)}`}>Answer that check</a>.
      </p>
      <div class="fields">
        <NumberField
          label="Money spent"
          value={soFar.money}
          onValue={(value) => change(withSpent(soFar, "money", value))}
          before={currencySign(known.currency)}
          messages={messagesAt(fault, "/find/soFar/money")}
          hint="Parts and services so far, the price of the bike apart."
        />
        <NumberField
          label="Hours spent"
          value={soFar.minutes === undefined ? undefined : inHours(soFar.minutes)}
          onValue={(value) =>
            change(withSpent(soFar, "minutes", value === undefined ? undefined : value * 60))
          }
          unit="h"
          messages={messagesAt(fault, "/find/soFar/minutes")}
        />
      </div>
      <p class="small" role="status">
        {spent === null ? "" : `${spent}: shown, not counted.`}
      </p>
      <Jobs soFar={soFar} onChange={change} course={course} known={known} />
      <BoughtList soFar={soFar} onChange={change} course={course} known={known} fault={fault} />
    </details>
  );
}

/** Without the last digits that sixtieths leave behind. */
const inHours = (spent: number) => Math.round((spent / 60) * 1e4) / 1e4;

/** What both lists need. */
export interface ListProps {
  readonly soFar: SoFar;
  readonly onChange: (soFar: SoFar) => void;
  readonly course: CourseOutcome | undefined;
  readonly known: Reference;
}

function Jobs({ soFar, onChange, course, known }: ListProps) {
  const order = useRef<readonly string[]>([]);
  const rows = jobRows(order.current, course?.plan?.operations ?? [], soFar.done, known);
  order.current = rows.map(({ operation }) => operation);
  if (rows.length === 0) return null;
  const plan = course === undefined ? "" : ` (plan to ${COURSE_WORDS[course.course].name.toLowerCase()})`;
  return (
    <fieldset class="begunlist">
      <legend>Done{plan}</legend>
      {rows.map(({ operation, name, done, minutes: time }) => (
        <label key={operation} class="tick">
          <input
            type="checkbox"
            checked={done}
            onChange={(event) => onChange(withDone(soFar, operation, event.currentTarget.checked))}
          />
          <span>
            {name}
            {time !== null && !done && <span class="small nowrap">{minutes(time)}</span>}
          </span>
        </label>
      ))}
      <p class="hint">
        Done: finished, and it held, at every wheel it concerns. Work that failed is a discovery: answer its
        check instead.
      </p>
    </fieldset>
  );
}
