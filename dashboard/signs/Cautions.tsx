import type { RaisedCaution } from "../api/types.ts";
import { sentence } from "../words/plain.ts";
import { Warning } from "./Warning.tsx";

/**
 * Cautions as blocks, hard ones in the colour of a stop; nothing where there are none.
 * @param atCause they stand at what raised them: that is not said again
 */
export function Cautions(props: { cautions: readonly RaisedCaution[]; atCause?: boolean }) {
  const { cautions, atCause = false } = props;
  if (cautions.length === 0) return null;
  return (
    <div class="warnings">
      {cautions.map(({ id, kind, title, text, because }) => (
        <Warning key={id} kind={kind === "hard" ? "stop" : "mind"}>
          <b>{sentence(title)}</b> {text}
          {!atCause && <p class="because">{sentence(because)}</p>}
        </Warning>
      ))}
    </div>
  );
}
