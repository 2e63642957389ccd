import { useRef } from "preact/hooks";
import { withAnswer } from "../answers/answers.ts";
import { isBlank, NOTHING_SO_FAR, type SoFar, withSpent } from "../answers/soFar.ts";
import { type Fault, messagesAt } from "../api/fault.ts";
import type { Appraisal, CourseOutcome, Reference } from "../api/types.ts";
import type { OwnFind } from "../finds/own.ts";
import { NumberField } from "../parts/NumberField.tsx";
import { ownFinds } from "../state/finds.ts";
import {
  BEGUN_ANSWER_CHECK,
  BEGUN_FACTS,
  BEGUN_MONEY_HINT,
  BEGUN_TITLE,
  notCounted,
} from "../words/begun.ts";
import { FIGURE_NAMES } from "../words/fields.ts";
import { currencySign } from "../words/money.ts";
import { inHours as refusedInHours } from "../words/refusal.ts";
import { begunWords, spentWords } from "../words/soFar.ts";
import { BoughtList } from "./BoughtList.tsx";
import { JobList } from "./JobList.tsx";
import { untoldResults } from "./untold.ts";

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
        <span class="foldname">{BEGUN_TITLE}</span>
        <span class="small">{begunWords(counted, currency)}</span>
      </summary>
      <p class="small">
        {BEGUN_FACTS} <a href={`/describe/${encodeURIComponent(own.id)}`}>{BEGUN_ANSWER_CHECK}</a>.
      </p>
      <div class="fields">
        <NumberField
          label={FIGURE_NAMES["/find/soFar/money"]}
          value={soFar.money}
          onValue={(value) => change(withSpent(soFar, "money", value))}
          before={currencySign(known.currency)}
          messages={messagesAt(fault, "/find/soFar/money")}
          hint={BEGUN_MONEY_HINT}
        />
        <NumberField
          label={FIGURE_NAMES["/find/soFar/minutes"]}
          value={soFar.minutes === undefined ? undefined : inHours(soFar.minutes)}
          onValue={(value) =>
            change(withSpent(soFar, "minutes", value === undefined ? undefined : value * 60))
          }
          unit="h"
          messages={messagesAt(fault, "/find/soFar/minutes").map(refusedInHours)}
        />
      </div>
      <p class="small" role="status">
        {spent === null ? "" : notCounted(spent)}
      </p>
      <JobList
        soFar={soFar}
        onChange={change}
        course={course}
        known={known}
        untold={appraisal === null ? [] : untoldResults(known, soFar.done, appraisal)}
        find={own.id}
      />
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
