import { useLayoutEffect, useRef } from "preact/hooks";
import type { Check } from "../api/types.ts";
import { uncapital } from "../words/count.ts";
import { COURSE_WORDS } from "../words/course.ts";
import { LOOK_ON_ANYWAY } from "../words/looks.ts";
import { READY_TITLES } from "../words/ready.ts";
import { ALL_MADE, ENOUGH, stillOwed, worthWords } from "../words/stand.ts";
import {
  STAND_GO_ON_OWED,
  STAND_NEEDS_APART,
  STAND_NEXT_HERE,
  WORTH_COULD_TURN,
  WORTH_LESS_TIME,
  WORTH_OWED,
  WORTH_TAKES,
} from "../words/standTexts.ts";
import { minutes } from "../words/time.ts";
import { LookCard, type LookCardProps } from "./LookCard.tsx";
import type { NextLook } from "./looks.ts";

interface NextHereProps extends Omit<LookCardProps, "check" | "onLater"> {
  /** The look to make now; null where none is left or none pays. */
  readonly look: { readonly check: Check; readonly worth: NextLook | null } | null;
  /** Looks at hand that are owed and do not pay, while nothing else does. */
  readonly owed: number;
  /** Looks at hand that are still open. */
  readonly open: number;
  /** Goes on with what does not pay. */
  readonly onGoOn: () => void;
  readonly onLater: () => void;
  /** Whether the heading takes the focus: the card before it was answered. */
  readonly takeFocus: boolean;
  /** Answered, and waiting for what is next. */
  readonly isLeaving: boolean;
  readonly currency: string;
}

/** The one look that is next on the stand. */
export function NextHere(props: NextHereProps) {
  const { look, takeFocus } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = look?.check.id ?? "";
  // With the card, not after it: a key pressed in between would lose the focus it went to.
  useLayoutEffect(() => {
    if (takeFocus) heading.current?.focus();
  }, [shown]);
  return (
    <section class="panel nexthere" aria-labelledby="next-title" aria-busy={props.isLeaving}>
      <p class="small">{STAND_NEXT_HERE}</p>
      <h2 id="next-title" ref={heading} tabIndex={-1}>
        {look?.check.name ?? (props.open === 0 ? ALL_MADE : ENOUGH)}
      </h2>
      {look === null ? (
        <Enough {...props} />
      ) : (
        // What is answered takes no second press while the next look is chosen.
        <div inert={props.isLeaving}>
          {look.worth !== null && <Worth worth={look.worth} check={look.check} currency={props.currency} />}
          <LookCard key={shown} {...props} check={look.check} />
        </div>
      )}
    </section>
  );
}

function Worth({ worth, check, currency }: { worth: NextLook; check: Check; currency: string }) {
  const { netGain, couldBecome, owed } = worth;
  const facts: [string, string][] = [[WORTH_TAKES, minutes(worth.minutes)]];
  if (netGain > 0) facts.push([WORTH_LESS_TIME, worthWords(netGain, currency)]);
  else if (owed)
    facts.push([WORTH_OWED, uncapital(READY_TITLES[check.group === "paperwork" ? "sale" : "ride"])]);
  if (couldBecome !== null) facts.push([WORTH_COULD_TURN, COURSE_WORDS[couldBecome].name]);
  return (
    <dl class="worth">
      {facts.map(([name, text]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}

function Enough({ owed, open, onGoOn }: NextHereProps) {
  if (open === 0) return <p>{STAND_NEEDS_APART}</p>;
  return (
    <>
      {owed > 0 && <p>{stillOwed(owed)}</p>}
      <div class="acts ends">
        <button type="button" class="btn quiet" onClick={onGoOn}>
          {owed > 0 ? STAND_GO_ON_OWED : LOOK_ON_ANYWAY}
        </button>
      </div>
    </>
  );
}
