import { isComplete } from "../answers/answers.ts";
import type { Reference } from "../api/types.ts";
import { ownFinds } from "../state/finds.ts";
import { REMOVE } from "../words/common.ts";
import { describedKind } from "../words/description.ts";
import { FINDS_TROUBLE_UNKEPT, FINDS_TROUBLE_UNREADABLE, NOT_FAR_ENOUGH } from "../words/ownFinds.ts";

/** Own finds that still lack one of the four picks. */
export function Unfinished({ known }: { known: Reference }) {
  const open = ownFinds.all.value.filter(({ answers }) => !isComplete(answers));
  if (open.length === 0) return null;
  return (
    <section class="panel later" aria-labelledby="open-title">
      <h2 id="open-title">{NOT_FAR_ENOUGH}</h2>
      <ul class="unplaced">
        {open.map(({ id, name, answers }) => (
          <li key={id}>
            <a href={`/describe/${encodeURIComponent(id)}`}>
              {name || describedKind(answers.attributes, known)}
            </a>
            <button type="button" class="plainbtn" onClick={() => ownFinds.remove(id)}>
              {REMOVE}
              <span class="sr"> {name || describedKind(answers.attributes, known)}</span>
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
      {trouble === "unreadable" ? FINDS_TROUBLE_UNREADABLE : FINDS_TROUBLE_UNKEPT}
    </p>
  );
}
