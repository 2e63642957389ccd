import { useEffect, useRef, useState } from "preact/hooks";
import type { Appraisal, Reference } from "../api/types.ts";
import type { OwnFind } from "../finds/own.ts";
import { standAt } from "../state/route.ts";
import { WHOLE_ANSWER } from "../words/common.ts";
import { LOOK_ON_ANYWAY } from "../words/looks.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { END_HOME, END_LEAVE, END_OFFER, endWords } from "../words/spotEnd.ts";
import { SPOT_LOOK_ON } from "../words/spotTexts.ts";
import { Elsewhere } from "./Elsewhere.tsx";
import { LeavePanel } from "./LeavePanel.tsx";
import { OfferPanel } from "./OfferPanel.tsx";
import { Owed } from "./Owed.tsx";
import { TakeHome } from "./TakeHome.tsx";
import { looksOf, type Step, sameLook } from "./trail.ts";
import type { Looking } from "./useLooking.ts";

export interface EndPanelProps {
  readonly known: Reference;
  readonly own: OwnFind;
  readonly appraisal: Appraisal | null;
  readonly looking: Looking;
  readonly trail: readonly Step[];
  readonly goal: number;
  readonly price: number | undefined;
  readonly paid: boolean;
}

type Choice = "offer" | "leave" | "home";

const CHOICES: readonly { readonly value: Choice; readonly label: string }[] = [
  { value: "offer", label: END_OFFER },
  { value: "leave", label: END_LEAVE },
  { value: "home", label: END_HOME },
];

/** The end of looking: offer, leave, or take home; and the way on for who looks further. */
export function EndPanel(props: EndPanelProps) {
  const { known, own, appraisal, looking, trail, paid } = props;
  const { queue } = looking;
  const [choice, setChoice] = useState<Choice | null>(null);
  const [offer, setOffer] = useState<number | undefined>(undefined);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (trail.length > 0) heading.current?.focus({ preventScroll: true });
    heading.current?.closest("main")?.scrollIntoView({ block: "start" });
  }, [trail.length]);
  const givenUp = looksOf(trail).filter(({ how }) => how === "cannot-tell");
  const left = queue.open.filter((look) => !givenUp.some((one) => sameLook(one, look)));
  const words = endWords(queue.worth.length, left.length, looksOf(trail).length);
  return (
    <>
      <section class="panel ask" aria-labelledby="end-title">
        <h2 id="end-title" ref={heading} tabIndex={-1}>
          {words.title}
        </h2>
        <p class="whynext">{words.line}</p>
        {paid ? (
          <p class="acts spotacts">
            <a class="btn" href={standAt(own.id)}>
              {PLACE_NAMES.stand}
            </a>
            <a class="btn quiet" href={`/finds/${encodeURIComponent(own.id)}`}>
              {WHOLE_ANSWER}
            </a>
          </p>
        ) : (
          <div class="choices endings">
            {CHOICES.map(({ value, label }) => (
              <button
                key={value}
                type="button"
                class="press"
                aria-expanded={choice === value}
                onClick={() => setChoice(choice === value ? null : value)}
              >
                <b>{label}</b>
              </button>
            ))}
          </div>
        )}
        {choice === "offer" && appraisal !== null && (
          <OfferPanel {...props} appraisal={appraisal} offer={offer} onOffer={setOffer} />
        )}
        {choice === "leave" && <LeavePanel own={own} />}
        {choice === "home" && <TakeHome own={own} currency={known.currency} offer={offer} />}
        {left.length > 0 && (
          <p class="lookon">
            <button type="button" class="plainbtn" onClick={() => looking.decide(false)}>
              {queue.worth.length > 0 ? SPOT_LOOK_ON : LOOK_ON_ANYWAY}
            </button>
          </p>
        )}
      </section>
      {appraisal !== null && <Elsewhere known={known} appraisal={appraisal} paid={paid} />}
      {appraisal !== null && <Owed known={known} appraisal={appraisal} looking={looking} />}
    </>
  );
}
