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
import { describedKind } from "../words/description.ts";
import { refusal } from "../words/refusal.ts";
import { verdict } from "../words/verdict.ts";

/** Describe a find of one's own and answer checks; the verdict follows every answer. */
export function DescribePage() {
  return <OwnFindPage page="describe" title="Describe a find" begin="Describe one" form={Form} />;
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
          <a href="/">Finds</a> /{" "}
          {own.name.trim() || (complete ? describedKind(attributes, known) : "a new one")}
        </p>
        <Heading title="Describe a find">
          {appraisal === null
            ? "Say what it is in four picks"
            : verdict(appraisal, hourlyGoal, { called, price, nameOf: namesIn(known).any })}
        </Heading>
        <p class="facts">
          Prices and chances come from invented demo data; no figure here is a market price. What you enter
          stays in this browser.
        </p>
        <OwnTrouble />
        {fault !== null && (
          <Trouble fault={fault} again={asking.again} say={(field) => refusal(field, known.checks)} />
        )}
        <div class="formgrid">
          <div>
            <FourPicks {...fields} />
            <Purchase {...fields} />
            <section class="panel" aria-labelledby="name-title">
              <h2 id="name-title">What do you call it?</h2>
              <div class="field">
                <label for="find-name">Name on the chart (optional)</label>
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
                    See the whole answer
                  </a>
                  <a class="btn quiet" href={standAt(own.id)}>
                    On the stand
                  </a>
                  {own.copyOf !== undefined && (
                    <a class="btn quiet" href="/compare">
                      See it beside its original
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
                <h2 id="first-title">Look before you pay</h2>
                <p class="small">The checks that apply come up once the four picks are made.</p>
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
