import { useEffect, useRef } from "preact/hooks";
import { withObservation } from "../answers/answers.ts";
import { messagesAt } from "../api/fault.ts";
import type { Appraisal, Check } from "../api/types.ts";
import { isMade } from "../checks/made.ts";
import { madeOf } from "../words/checkTexts.ts";
import { capital } from "../words/count.ts";
import {
  checksBefore,
  DESCRIBE_LOOK_FIRST,
  DESCRIBE_LOOK_FURTHER,
  DESCRIBE_NARROWS,
} from "../words/describePage.ts";
import { type Bike, bikeOf, checksOn } from "./bike.ts";
import { CheckCard } from "./CheckCard.tsx";
import type { DescribeProps } from "./Description.tsx";

/** The checks that apply: those for the first ten minutes open to view, the others folded by the wheel's groups. */
export function Checks(props: DescribeProps & { appraisal: Appraisal | null }) {
  const { answers, known } = props;
  const bike = bikeOf(answers, known);
  const checks = checksOn(bike, known);
  const first = checks.filter(({ priority }) => priority === "triage");
  const later = checks.filter(({ priority }) => priority !== "triage");
  const wheel = [...new Set(known.checks.map(({ spoke }) => spoke))];
  const groups = wheel.filter((group) => later.some(({ spoke }) => spoke === group));
  const minutes = Math.round(first.reduce((sum, check) => sum + check.minutes, 0));
  return (
    <>
      <section class="panel" aria-labelledby="first-title">
        <h2 id="first-title">{DESCRIBE_LOOK_FIRST}</h2>
        <p class="small">{checksBefore(first.length, minutes)}</p>
        <CheckList checks={first} bike={bike} {...props} />
      </section>
      <section class="panel" aria-labelledby="later-title">
        <h2 id="later-title">{DESCRIBE_LOOK_FURTHER}</h2>
        <p class="small">{DESCRIBE_NARROWS}</p>
        {groups.map((group) => (
          <Group
            key={group}
            name={group}
            checks={later.filter(({ spoke }) => spoke === group)}
            bike={bike}
            {...props}
          />
        ))}
      </section>
    </>
  );
}

type ListProps = DescribeProps & { checks: readonly Check[]; appraisal: Appraisal | null; bike: Bike };

function Group({ name, ...props }: ListProps & { name: string }) {
  const { checks, answers, fault } = props;
  const made = checks.filter(({ id }) => isMade(answers.observations[id])).length;
  const wrong = checks.some(({ id }) => messagesAt(fault, `/observations/${id}`).length > 0);
  const fold = useRef<HTMLDetailsElement>(null);
  // A refused answer inside opens the group; it is never closed under the user's hands.
  useEffect(() => {
    if (wrong && fold.current !== null) fold.current.open = true;
  }, [wrong]);
  return (
    <details ref={fold} class="group">
      <summary>
        <span class="foldname">{capital(name)}</span>
        <span class="small">{madeOf(made, checks.length)}</span>
      </summary>
      <CheckList {...props} />
    </details>
  );
}

function CheckList({ checks, answers, fault, appraisal, bike, onAnswers }: ListProps) {
  return (
    <div class="checklist">
      {checks.map((check) => (
        <CheckCard
          key={check.id}
          check={check}
          observation={answers.observations[check.id]}
          onObservation={(observation) => onAnswers(withObservation(answers, check.id, observation))}
          appraisal={appraisal}
          fault={fault}
          bike={bike}
        />
      ))}
    </div>
  );
}
