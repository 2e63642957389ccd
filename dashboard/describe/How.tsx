import type { Check } from "../api/types.ts";
import { drawingOf } from "../drawings/drawingOf.ts";
import { lengthUnit } from "../state/units.ts";
import { CHECK_NO_TOOLS } from "../words/checkAnswer.ts";
import { lengthsFor, withLengths } from "../words/length.ts";
import { minutes } from "../words/time.ts";

/**
 * How a check is made: its drawing where it has one, what to do, how long it takes and with what.
 * @param bare without the drawing: another stands beside it
 */
export function How({ check, bare = false }: { check: Check; bare?: boolean }) {
  const drawing = bare ? undefined : drawingOf(check.id);
  return (
    <div class={drawing === undefined ? "how" : "how drawn"}>
      {drawing !== undefined && (
        // A drawing of our own, built into the page.
        <div class="pic" dangerouslySetInnerHTML={{ __html: drawing }} />
      )}
      <div>
        <p>{withLengths(check.how, lengthsFor(check, lengthUnit.value))}</p>
        <p class="small">
          {minutes(check.minutes)}, {toolsFor(check)}
        </p>
      </div>
    </div>
  );
}

function toolsFor({ tools }: Pick<Check, "tools">): string {
  return tools.length === 0 ? CHECK_NO_TOOLS : tools.map((tool) => tool.replaceAll("-", " ")).join(", ");
}
