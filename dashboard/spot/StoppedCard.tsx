import { useEffect, useRef } from "preact/hooks";
import type { Appraisal } from "../api/types.ts";
import type { OwnFind } from "../finds/own.ts";
import { Cautions } from "../signs/Cautions.tsx";
import { WHOLE_ANSWER } from "../words/common.ts";
import { END_LEAVE_IT, END_LOOK_AT_ANOTHER, stoppedTitle } from "../words/spotEnd.ts";

/** Everything stops: the reason, the cautions, and the ways out. No money is shown. */
export function StoppedCard({ appraisal, own }: { appraisal: Appraisal; own: OwnFind }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const hard = appraisal.cautions.filter(({ kind }) => kind === "hard");
  const first = hard.filter(({ id }) => id === appraisal.decision.stop);
  const others = hard.filter(({ id }) => id !== appraisal.decision.stop);
  return (
    <section class="panel ask stoppedcard" aria-labelledby="stopped-title">
      <h2 id="stopped-title" ref={heading} tabIndex={-1}>
        {stoppedTitle(appraisal)}
      </h2>
      <Cautions cautions={[...first, ...others]} />
      <p class="acts spotacts">
        <a class="btn" href="/">
          {END_LEAVE_IT}
        </a>
        <a class="btn quiet" href="/spot">
          {END_LOOK_AT_ANOTHER}
        </a>
        <a class="btn quiet" href={`/finds/${encodeURIComponent(own.id)}`}>
          {WHOLE_ANSWER}
        </a>
      </p>
    </section>
  );
}
