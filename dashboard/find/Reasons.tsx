import { withMoney } from "../words/money.ts";
import { sentence } from "../words/plain.ts";
import { withHours } from "../words/time.ts";

/** How many reasons stand open; what follows is mostly why other courses are closed. */
const OPEN_REASONS = 2;

/** Why, in sentences. */
export function Reasons({ reasons, currency }: { reasons: readonly string[]; currency: string }) {
  const told = reasons.map((reason) => sentence(withHours(withMoney(reason, currency))));
  // A fold for a single line would hide it for nothing.
  const open = told.length === OPEN_REASONS + 1 ? told.length : OPEN_REASONS;
  const rest = told.slice(open);
  return (
    <>
      <ReasonList reasons={told.slice(0, open)} />
      {rest.length > 0 && (
        <details>
          <summary>More reasons ({rest.length})</summary>
          <ReasonList reasons={rest} />
        </details>
      )}
    </>
  );
}

function ReasonList({ reasons }: { reasons: readonly string[] }) {
  return (
    <ul class="reasons">
      {reasons.map((reason) => (
        <li key={reason}>{reason}</li>
      ))}
    </ul>
  );
}
