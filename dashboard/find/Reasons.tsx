import { withMoney } from "../words/money.ts";
import { sentence } from "../words/plain.ts";

/** How many reasons stand open; what follows is mostly why other courses are closed. */
const OPEN_REASONS = 2;

/** Why, in sentences. */
export function Reasons({ reasons, currency }: { reasons: readonly string[]; currency: string }) {
  const told = reasons.map((reason) => sentence(withMoney(reason, currency)));
  const rest = told.slice(OPEN_REASONS);
  return (
    <>
      <ReasonList reasons={told.slice(0, OPEN_REASONS)} />
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
