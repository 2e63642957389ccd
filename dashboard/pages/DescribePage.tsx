import { type Answers, isComplete, NEEDED } from "../answers/answers.ts";
import { Checks } from "../describe/Checks.tsx";
import { FourPicks, FurtherDetails, Purchase } from "../describe/Description.tsx";
import { VerdictBar } from "../describe/VerdictBar.tsx";
import { namesIn } from "../find/names.ts";
import { OwnTrouble } from "../finds/OwnNotes.tsx";
import { LONGEST_NAME, type OwnFind } from "../finds/own.ts";
import { Heading } from "../parts/Heading.tsx";
import { type OpenedProps, OwnFindPage } from "../parts/OwnFindPage.tsx";
import { Trouble } from "../parts/Trouble.tsx";
import { askingOf, ownFinds } from "../state/finds.ts";
import { rename, standAt } from "../state/route.ts";
import { termsOf } from "../state/terms.ts";
import { WHOLE_ANSWER } from "../words/common.ts";
import {
  DESCRIBE_A_NEW_ONE,
  DESCRIBE_BEGIN,
  DESCRIBE_BESIDE_ORIGINAL,
  DESCRIBE_CALL_IT,
  DESCRIBE_FOUR_PICKS,
  DESCRIBE_INVENTED,
  DESCRIBE_LOOK_FIRST,
  DESCRIBE_NAME,
  DESCRIBE_PICKS_FIRST,
} from "../words/describePage.ts";
import { describedKind } from "../words/description.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { refusal } from "../words/refusal.ts";
import { verdict } from "../words/verdict.ts";

/** Describe a find of one's own and answer checks; the verdict follows every answer. */
export function DescribePage() {
  return <OwnFindPage page="describe" title={PLACE_NAMES.describe} begin={DESCRIBE_BEGIN} form={Form} />;
}

function Form({ own, isNew, known, goal: wished }: OpenedProps) {
  const asking = askingOf(own.id);
  const complete = isComplete(own.answers);
  const appraisal = complete ? asking.answer.value : null;
  const fault = complete ? asking.fault.value : null;
  const { attributes } = own.answers;
  const { goal: hourlyGoal, price, paid } = termsOf(asking, wished);

  const put = (next: OwnFind) => {
    ownFinds.put(next);
    // The first answer makes the find, and gives the page its address.
    if (isNew) rename(`/describe/${encodeURIComponent(next.id)}`);
  };
  const fields = {
    answers: own.answers,
    known,
    fault,
    onAnswers: (answers: Answers) => put({ ...own, answers }),
  };
  const called = own.name.trim() === "" ? "it" : own.name.trim();
  return (
    <>
      <main class="page describe" id="main">
        <p class="crumb">
          <a href="/">{PLACE_NAMES.finds}</a> /{" "}
          {own.name.trim() || (complete ? describedKind(attributes, known) : DESCRIBE_A_NEW_ONE)}
        </p>
        <Heading title={PLACE_NAMES.describe}>
          {appraisal === null
            ? DESCRIBE_FOUR_PICKS
            : verdict(appraisal, hourlyGoal, { called, price, nameOf: namesIn(known).any })}
        </Heading>
        <p class="facts">{DESCRIBE_INVENTED}</p>
        <OwnTrouble />
        {fault !== null && (
          <Trouble fault={fault} again={asking.again} say={(field) => refusal(field, known.checks)} />
        )}
        <div class="formgrid">
          <div>
            <FourPicks {...fields} />
            <Purchase {...fields} />
            <section class="panel" aria-labelledby="name-title">
              <h2 id="name-title">{DESCRIBE_CALL_IT}</h2>
              <div class="field">
                <label for="find-name">{DESCRIBE_NAME}</label>
                <input
                  id="find-name"
                  type="text"
                  autocomplete="off"
                  maxLength={LONGEST_NAME}
                  value={own.name}
                  onInput={(event) => put({ ...own, name: event.currentTarget.value })}
                />
              </div>
              {complete && (
                <p class="acts">
                  <a class="btn quiet" href={`/finds/${encodeURIComponent(own.id)}`}>
                    {WHOLE_ANSWER}
                  </a>
                  <a class="btn quiet" href={standAt(own.id)}>
                    {PLACE_NAMES.stand}
                  </a>
                  {own.copyOf !== undefined && (
                    <a class="btn quiet" href="/compare">
                      {DESCRIBE_BESIDE_ORIGINAL}
                    </a>
                  )}
                </p>
              )}
            </section>
            <FurtherDetails {...fields} />
          </div>
          <div>
            {complete ? (
              <Checks {...fields} appraisal={appraisal} />
            ) : (
              <section class="panel" aria-labelledby="first-title">
                <h2 id="first-title">{DESCRIBE_LOOK_FIRST}</h2>
                <p class="small">{DESCRIBE_PICKS_FIRST}</p>
              </section>
            )}
          </div>
        </div>
      </main>
      <VerdictBar
        appraisal={appraisal}
        status={asking.status.value}
        fault={fault}
        goal={hourlyGoal}
        price={price}
        paid={paid}
        open={NEEDED.filter((name) => attributes[name] === undefined).length}
      />
    </>
  );
}
