import { Explained } from "../parts/Term.tsx";
import { withMoney } from "../words/money.ts";
import { sentence } from "../words/plain.ts";
import { moreReasons } from "../words/reasons.ts";
import { withHours } from "../words/time.ts";

/** How many reasons stand open; what follows is mostly why other courses are closed. */
const OPEN_REASONS = 2;

/** Why, in sentences. */
export function Reasons({ reasons, currency }: { reasons: readonly string[]; currency: string }) {
  const told = reasons.map((reason) => sentence(withHours(withMoney(reason, currency))));
  // A fold for a single line would hide it for nothing.
  const open = told.length === OPEN_REASONS + 1 ? told.length : OPEN_REASONS;
  const rest = told.slice(open);
  const explained = told.find((reason) => AFTER_HOURS.test(reason));
  return (
    <>
      <ReasonList reasons={told.slice(0, open)} explained={explained} />
      {rest.length > 0 && (
        <details>
          <summary>{moreReasons(rest.length)}</summary>
          <ReasonList reasons={rest} explained={explained} />
        </details>
      )}
    </>
  );
}

/** What a reason says of the margin less the hours at the goal. */
const AFTER_HOURS = /after your hours[^,]*/;

/** @param explained the first that names what is left after the hours: there the word is explained */
function ReasonList(props: { reasons: readonly string[]; explained: string | undefined }) {
  const { reasons, explained } = props;
  return (
    <ul class="reasons">
      {reasons.map((reason) => (
        <li key={reason}>
          {reason === explained ? <Explained text={reason} words={AFTER_HOURS} of="net-benefit" /> : reason}
        </li>
      ))}
    </ul>
  );
}
