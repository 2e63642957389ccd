import type { Fault, FieldFault } from "../api/fault.ts";
import { TRY_AGAIN } from "../words/common.ts";
import { troubleAdvice, troubleTitle } from "../words/trouble.ts";

/** Why there is no newer answer, and what to do. The last answer and all that was typed stay. */
export function Trouble(props: {
  fault: Fault;
  again: () => void;
  /** Puts a refusal in words that name the field as the page does. */
  say?: (field: FieldFault) => string;
}) {
  const { fault, again, say = ({ message }) => message } = props;
  return (
    <div class="trouble" role="alert">
      <p>
        <b>{troubleTitle(fault)}</b> {troubleAdvice(fault)}
      </p>
      {fault.kind === "refused" && fault.fields.length > 0 && (
        <ul>
          {fault.fields.map((field) => (
            <li key={field.pointer + field.message}>{say(field)}</li>
          ))}
        </ul>
      )}
      {fault.kind !== "refused" && (
        <button type="button" class="btn quiet" onClick={again}>
          {TRY_AGAIN}
        </button>
      )}
    </div>
  );
}
