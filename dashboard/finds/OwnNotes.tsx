import { useRef, useState } from "preact/hooks";
import { isComplete } from "../answers/answers.ts";
import type { Reference } from "../api/types.ts";
import { RemoveSure } from "../find/RemoveSure.tsx";
import { ownFinds, removeFind } from "../state/finds.ts";
import { REMOVE } from "../words/common.ts";
import { describedKind } from "../words/description.ts";
import { FINDS_TROUBLE_UNKEPT, FINDS_TROUBLE_UNREADABLE, NOT_FAR_ENOUGH } from "../words/ownFinds.ts";

/** Own finds that still lack one of the four picks. */
export function Unfinished({ known }: { known: Reference }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const open = ownFinds.all.value.filter(({ answers }) => !isComplete(answers));
  // What had the focus is gone with its find, and with the last one the whole panel.
  const remove = (id: string) => {
    removeFind(id);
    (open.length > 1 ? heading.current : document.querySelector("h1"))?.focus();
  };
  if (open.length === 0) return null;
  return (
    <section class="panel later" aria-labelledby="open-title">
      <h2 id="open-title" ref={heading} tabIndex={-1}>
        {NOT_FAR_ENOUGH}
      </h2>
      <ul class="unplaced">
        {open.map(({ id, name, answers }) => (
          <UnfinishedFind
            key={id}
            id={id}
            name={name || describedKind(answers.attributes, known)}
            onRemove={() => remove(id)}
          />
        ))}
      </ul>
    </section>
  );
}

function UnfinishedFind({ id, name, onRemove }: { id: string; name: string; onRemove: () => void }) {
  const [sure, setSure] = useState(false);
  return (
    <li>
      <a href={`/describe/${encodeURIComponent(id)}`}>{name}</a>
      {sure ? (
        <RemoveSure name={name} onKeep={() => setSure(false)} onRemove={onRemove} />
      ) : (
        <button type="button" class="plainbtn" onClick={() => setSure(true)}>
          {REMOVE}
          <span class="sr"> {name}</span>
        </button>
      )}
    </li>
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
