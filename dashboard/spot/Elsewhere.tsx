import type { Appraisal, Reference } from "../api/types.ts";
import { elsewhereTitle, testWords } from "../words/spotEnd.ts";
import { SPOT_AT_HOME } from "../words/spotTexts.ts";
import { adviceOf } from "./advice.ts";

/** What is worth its minutes and its fee, but not made where the bike stands: tests by others, and checks at home. */
export function Elsewhere(props: { known: Reference; appraisal: Appraisal; paid: boolean }) {
  const { known, appraisal, paid } = props;
  const advice = adviceOf(appraisal);
  const tests = advice?.tests ?? [];
  const atHome = advice?.atHome ?? [];
  if (tests.length === 0 && atHome.length === 0) return null;
  return (
    <section class="panel" aria-labelledby="elsewhere-title">
      <h2 id="elsewhere-title">{elsewhereTitle(tests.length, atHome.length, paid)}</h2>
      <ul class="lookrows">
        {tests.map((test) => (
          <li key={test.operation}>
            <b>{known.operations.find(({ id }) => id === test.operation)?.name ?? test.operation}</b>
            <span class="mv">{testWords(test, known.currency)}</span>
          </li>
        ))}
        {atHome.map((id) => (
          <li key={id}>
            <b>{known.checks.find((check) => check.id === id)?.name ?? id}</b>
            <span class="mv">{SPOT_AT_HOME}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
