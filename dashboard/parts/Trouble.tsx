import type { Fault, FieldFault } from "../api/fault.ts";

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
        <b>{title(fault)}</b> {advice(fault)}
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
          Try again
        </button>
      )}
    </div>
  );
}

function title(fault: Fault): string {
  if (fault.kind === "no-signal") return "No signal.";
  return fault.kind === "refused" ? "Not worked out." : "The service failed.";
}

function advice(fault: Fault): string {
  if (fault.kind === "no-signal")
    return "What you entered is kept; it is asked again once the connection is back.";
  if (fault.kind === "refused")
    return fault.fields.length > 0 ? "Change this, and it goes on:" : fault.detail;
  return "What you entered is kept. Wait a moment and try again.";
}
