import { isComplete } from "../answers/answers.ts";
import type { Reference } from "../api/types.ts";
import { ownFinds } from "../state/finds.ts";
import { describedKind } from "../words/description.ts";

/** Own finds that still lack one of the four picks. */
export function Unfinished({ known }: { known: Reference }) {
  const open = ownFinds.all.value.filter(({ answers }) => !isComplete(answers));
  if (open.length === 0) return null;
  return (
    <section class="panel later" aria-labelledby="open-title">
      <h2 id="open-title">Not described far enough to work out</h2>
      <ul class="unplaced">
        {open.map(({ id, name, answers }) => (
          <li key={id}>
            <a href={`/describe/${encodeURIComponent(id)}`}>
              {name || describedKind(answers.attributes, known)}
            </a>
            <button type="button" class="plainbtn" onClick={() => ownFinds.remove(id)}>
              Remove<span class="sr"> {name || describedKind(answers.attributes, known)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What went wrong with keeping finds in the browser. */
export function OwnTrouble() {
  const trouble = ownFinds.trouble.value;
  if (trouble === null) return null;
  return (
    <p class="note" role="status">
      {trouble === "unreadable"
        ? "What this browser kept of your own finds could not be read. You start afresh."
        : "This browser keeps nothing for this page: your own finds last until you close it."}
    </p>
  );
}
