import type { ComponentChildren } from "preact";
import type { Appraisal, Reference } from "../api/types.ts";
import { Bicycle } from "../drawings/Bicycle.tsx";
import { CopyButton } from "../find/CopyButton.tsx";
import { FindPanels } from "../find/FindPanels.tsx";
import { namesIn } from "../find/names.ts";
import { OwnActions } from "../find/OwnActions.tsx";
import { RefusedWork } from "../find/RefusedWork.tsx";
import { ShareAndPrint } from "../find/ShareAndPrint.tsx";
import type { Find } from "../finds/find.ts";
import { isInvented, ownership } from "../finds/ownership.ts";
import { DemoLine } from "../parts/DemoLine.tsx";
import { Heading } from "../parts/Heading.tsx";
import { Trouble } from "../parts/Trouble.tsx";
import { CourseSign } from "../signs/CourseSign.tsx";
import { askingOf, finds } from "../state/finds.ts";
import { goal } from "../state/goal.ts";
import { reference } from "../state/reference.ts";
import { route, standAt } from "../state/route.ts";
import { termsOf } from "../state/terms.ts";
import { INVENTED_FIND, NO_ANSWER, WORKING, YOUR_OWN } from "../words/common.ts";
import { factsLine } from "../words/description.ts";
import { fromWhere, THIS_FIND } from "../words/findPanels.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { sentence } from "../words/plain.ts";
import { refusal } from "../words/refusal.ts";
import { verdict } from "../words/verdict.ts";
import { Unknown, Waiting } from "./findStates.tsx";

/** What should I do with this one, and why? */
export function FindPage() {
  const here = route.value;
  const known = reference.value;
  const hourlyGoal = goal.value;
  if (here.page !== "find" || known === null || hourlyGoal === null) return <Waiting />;
  const find = finds.value.find(({ id }) => id === here.id);
  if (find === undefined) return <Unknown />;
  return <Known find={find} known={known} goal={hourlyGoal} />;
}

interface KnownProps {
  readonly find: Find;
  readonly known: Reference;
  readonly goal: number;
  /** A find that is only looked at, and what can be done with it; absent for one that is kept here. */
  readonly visit?: { readonly tag: string; readonly actions: ComponentChildren };
}

/** The answer about one find, kept here or only looked at. */
export function Known({ find, known, goal: wished, visit }: KnownProps) {
  const asking = askingOf(find.id);
  const appraisal = asking.answer.value;
  const fault = asking.fault.value;
  const stopped = appraisal !== null && appraisal.decision.stop !== null;
  // Below the heading nothing is shown that the answer would push aside.
  const waiting = appraisal === null && fault === null;
  const names = namesIn(known);
  const { goal: hourlyGoal, price, paid, ownParts } = termsOf(asking, wished);
  return (
    <main class="page" id="main">
      <DemoLine
        own={visit === undefined ? !find.invented : !isInvented(find)}
        {...(visit === undefined ? {} : { called: THIS_FIND })}
      />
      <p class="crumb">
        <a href="/">{PLACE_NAMES.finds}</a> / {find.name}
      </p>
      <div class="findhead">
        <div>
          <p class="eyebrow">
            {find.name}
            {visit !== undefined && <span class="tag">{visit.tag}</span>}
            {(visit === undefined || isInvented(find)) && (
              <span class="tag">
                {find.invented ? INVENTED_FIND : isInvented(find) ? ownership(find) : YOUR_OWN}
              </span>
            )}
          </p>
          <Heading title={find.name}>
            {appraisal === null ? (
              waiting ? (
                WORKING
              ) : (
                NO_ANSWER
              )
            ) : (
              <Said appraisal={appraisal}>
                {verdict(appraisal, hourlyGoal, { called: find.called, price, nameOf: names.any })}
              </Said>
            )}
          </Heading>
          {!waiting && (
            <p class="facts">
              {find.line !== "" && `${sentence(find.line)} `}
              {factsLine(find.body, known, stopped ? null : known.currency)}
              {find.where !== "" && ` ${fromWhere(find.where)}`}
            </p>
          )}
        </div>
        {!waiting && (
          <div class="findside">
            <Bicycle find={find.body.find} />
            {visit !== undefined ? (
              visit.actions
            ) : (
              <>
                {find.invented ? (
                  <div class="acts">
                    <a class="btn quiet" href={standAt(find.id)}>
                      {PLACE_NAMES.stand}
                    </a>
                    <CopyButton find={find} />
                  </div>
                ) : (
                  <OwnActions find={find} />
                )}
                <ShareAndPrint
                  find={find}
                  known={known}
                  answered={
                    appraisal === null ? null : { appraisal, body: asking.answered.value ?? find.body }
                  }
                  ownParts={ownParts}
                />
              </>
            )}
          </div>
        )}
      </div>
      <p class="working" role="status">
        {asking.status.value === "slow" ? WORKING : ""}
      </p>
      {fault !== null && (
        <Trouble fault={fault} again={asking.again} say={(field) => refusal(field, known.checks)} />
      )}
      {appraisal === null && !find.invented && visit === undefined && (
        <RefusedWork id={find.id} known={known} fault={fault} />
      )}
      {appraisal !== null && (
        <FindPanels
          find={find}
          known={known}
          appraisal={appraisal}
          goal={hourlyGoal}
          price={price}
          paid={paid}
          ownParts={ownParts}
          dimmed={asking.status.value !== "settled"}
          fault={fault}
          visiting={visit !== undefined}
        />
      )}
    </main>
  );
}

function Said({ appraisal, children }: { appraisal: Appraisal; children: string }) {
  return (
    <>
      {appraisal.decision.stop === null && <CourseSign course={appraisal.decision.course} />}
      {children}
    </>
  );
}
