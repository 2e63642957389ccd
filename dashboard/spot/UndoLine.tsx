import type { ComponentChildren } from "preact";
import { LOOK_UNDO } from "../words/looks.ts";

/** What was answered last, with the way back. */
export function UndoLine({ onUndo, children }: { onUndo: () => void; children: ComponentChildren }) {
  return (
    <div class="was">
      <p>{children}</p>
      <button type="button" class="plainbtn" onClick={onUndo}>
        {LOOK_UNDO}
      </button>
    </div>
  );
}
