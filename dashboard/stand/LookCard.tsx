import { withAnswer, withObservation } from "../answers/answers.ts";
import { sendableObservation } from "../answers/reading.ts";
import { messagesAt } from "../api/fault.ts";
import type { Check, Observation, Reading } from "../api/types.ts";
import { isMade } from "../checks/made.ts";
import type { Bike } from "../describe/bike.ts";
import { CheckAnswer } from "../describe/CheckAnswer.tsx";
import { How } from "../describe/How.tsx";
import { isDrawn } from "../describe/MeasuredDrawing.tsx";
import { summary } from "../describe/summary.ts";
import { TyreReader } from "../describe/TyreReader.tsx";
import { lengthUnit } from "../state/units.ts";
import { MARKING } from "../words/checkTexts.ts";
import { DONE } from "../words/common.ts";
import { uncapital } from "../words/count.ts";
import { LOOK_STATE_CANT_TELL, LOOK_STATE_TAKEN_BACK, saidOf } from "../words/lookState.ts";
import { LOOK_CANT_TELL, LOOK_LATER } from "../words/looks.ts";
import { CautionsAt, onCheck } from "./CautionsAt.tsx";
import { Found } from "./Found.tsx";
import type { Bench } from "./useBench.ts";

export interface LookCardProps {
  readonly check: Check;
  readonly bench: Bench;
  readonly bike: Bike;
  /** The check is answered, or could not be told: on with the next. */
  readonly onDone: () => void;
  /** Puts it off; absent where it was opened by hand. */
  readonly onLater?: (() => void) | undefined;
}

/** One check on the stand: what warns, how it is made, its answers. A pressed level is the whole answer; a measurement ends with Done. */
export function LookCard({ check, bench, bike, onDone, onLater }: LookCardProps) {
  const { answers, appraisal, fault } = bench;
  const observation = answers.observations[check.id];
  const readings = (observation as Reading | undefined)?.measured ?? {};
  const answer = (next: Observation | undefined) => {
    const said =
      next === undefined ? LOOK_STATE_TAKEN_BACK : uncapital(summary(check, next, lengthUnit.value));
    bench.put(withObservation(answers, check.id, next), saidOf(check.name, said), {
      check: check.id,
      unsure: without(bench.unsure, check),
    });
  };
  const cannotTell = () => {
    const next = observation === undefined ? answers : withObservation(answers, check.id, undefined);
    bench.put(next, saidOf(check.name, LOOK_STATE_CANT_TELL), {
      check: check.id,
      unsure: [...without(bench.unsure, check), check.id],
    });
    onDone();
  };
  return (
    <div class="checkbody" data-check={check.id}>
      <CautionsAt cautions={onCheck(appraisal?.cautions ?? [], check.id)} />
      <How check={check} bare={isDrawn(check, readings)} />
      {check.measurement?.derivation.kind === "bead-seat" && (
        <TyreReader
          text={answers.tyreMarking}
          onText={(text) =>
            bench.put(
              withAnswer(answers, "tyreMarking", text),
              saidOf(MARKING, text ?? LOOK_STATE_TAKEN_BACK),
            )
          }
          read={appraisal?.tyre ?? null}
          messages={messagesAt(fault, "/find/tyreMarking")}
        />
      )}
      <CheckAnswer
        check={check}
        observation={observation}
        onObservation={answer}
        fault={fault}
        bike={bike}
        pressing
        onPressed={onDone}
        after={(wheel) => <Found check={check} wheel={wheel} bench={bench} bike={bike} />}
      />
      <div class="acts ends">
        {(needsDone(check, observation) || isMarked(bench, check)) && (
          <button type="button" class="btn" onClick={onDone}>
            {DONE}
          </button>
        )}
        <button type="button" class="btn quiet cannot" onClick={cannotTell}>
          {LOOK_CANT_TELL}
        </button>
        {onLater !== undefined && (
          <button type="button" class="btn quiet" onClick={onLater}>
            {LOOK_LATER}
          </button>
        )}
      </div>
    </div>
  );
}

const without = (unsure: readonly string[], { id }: Check) => unsure.filter((one) => one !== id);

/** Whether the tyre's marking alone answers the check. */
function isMarked({ answers, appraisal }: Bench, { id }: Check): boolean {
  const isFound = appraisal?.findings.some(({ check }) => check === id) === true;
  return answers.tyreMarking !== undefined && answers.observations[id] === undefined && isFound;
}

/** A reading is typed digit by digit, and a wheel comes after the other: such an answer ends when its owner says so. */
function needsDone(check: Check, observation: Observation | undefined): boolean {
  if (observation === undefined || !isMade(observation)) return false;
  return sendableObservation(observation, check) !== null;
}
