import { NEEDED } from "../answers/answers.ts";
import { DemoLine } from "../parts/DemoLine.tsx";
import { ownFinds } from "../state/finds.ts";
import { describedKind } from "../words/description.ts";
import { FIELD_NAMES } from "../words/fields.ts";
import { PICK_HINTS, SPOT_TITLE } from "../words/spot.ts";
import {
  pickOf,
  SPOT_START_AT_HOME,
  SPOT_START_GO_ON_WITH_YOURS,
  SPOT_START_KEEP,
  SPOT_START_ON_ONE_PAGE,
} from "../words/spotStart.ts";
import { SPOT_ALL_DETAILS } from "../words/spotTexts.ts";
import type { StageProps } from "./OnTheSpot.tsx";
import { SpotHead } from "./SpotHead.tsx";
import { UndoLine } from "./UndoLine.tsx";

interface PickStageProps extends StageProps {
  readonly name: (typeof NEEDED)[number];
  readonly isNew: boolean;
}

/** One of the four picks as a page of large buttons; pressing one goes on to the next. */
export function PickStage({
  name,
  own,
  known,
  isNew,
  acted,
  onStep,
  onUndo,
  trail,
  onReopen,
}: PickStageProps) {
  const { attributes } = own.answers;
  const before = attributes[name];
  const made = NEEDED.filter((one) => one !== name && attributes[one] !== undefined);
  const label = (one: (typeof NEEDED)[number]) =>
    known.attributes[one].find(({ value }) => value === attributes[one])?.label ?? attributes[one];
  return (
    <main class="page spot picking" id="main">
      <SpotHead title={SPOT_TITLE} heading={FIELD_NAMES[name]} focus={acted}>
        <p class="small">
          {pickOf(NEEDED.indexOf(name) + 1, NEEDED.length)} {PICK_HINTS[name]}
        </p>
      </SpotHead>
      {trail.length > 0 && <UndoLine onUndo={onUndo}>{made.map(label).join(", ")}</UndoLine>}
      <section class="panel" aria-label={FIELD_NAMES[name]}>
        <div class={known.attributes[name].length > SHORT ? "choices many" : "choices"}>
          {known.attributes[name].map(({ value, label: words }) => (
            <button
              key={value}
              type="button"
              class="press"
              aria-pressed={value === before}
              onClick={() =>
                onStep({ kind: "pick", name, set: value, ...(before === undefined ? {} : { before }) })
              }
            >
              <b>{words}</b>
            </button>
          ))}
        </div>
      </section>
      {before !== undefined && (
        <p class="acts spotacts">
          <button type="button" class="btn quiet" onClick={() => onReopen(null)}>
            {SPOT_START_KEEP}
          </button>
        </p>
      )}
      {isNew ? <GoOn {...{ known }} /> : null}
    </main>
  );
}

/** From so many choices on they stand in two columns. */
const SHORT = 8;

/** The user's own finds, to go on with, and the long form. */
function GoOn({ known }: Pick<StageProps, "known">) {
  const own = [...ownFinds.all.value].reverse();
  return (
    <>
      {own.length > 0 && (
        <section class="panel later" aria-labelledby="goon-title">
          <h2 id="goon-title">{SPOT_START_GO_ON_WITH_YOURS}</h2>
          <ul class="goon">
            {own.map(({ id, name, answers }) => (
              <li key={id}>
                <a href={`/spot/${encodeURIComponent(id)}`}>
                  {name.trim() || describedKind(answers.attributes, known)}
                </a>
              </li>
            ))}
          </ul>
        </section>
      )}
      <div class="later">
        <DemoLine own />
      </div>
      <p class="small">
        {SPOT_START_AT_HOME} <a href="/describe">{SPOT_ALL_DETAILS}</a> {SPOT_START_ON_ONE_PAGE}
      </p>
    </>
  );
}
