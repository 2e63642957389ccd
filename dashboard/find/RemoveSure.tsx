import { askingOf, ownFinds } from "../state/finds.ts";
import { go } from "../state/route.ts";
import { KEEP_IT, REMOVE_FOR_GOOD, REMOVE_SURE } from "../words/removeSure.ts";

/** Asks before a find of one's own is removed: there is no way back. The focus is on keeping it. */
export function RemoveSure({ id, onKeep }: { id: string; onKeep: () => void }) {
  const remove = () => {
    ownFinds.remove(id);
    askingOf(id).stop();
    go("/");
  };
  return (
    <fieldset class="acts">
      <legend class="sr">{REMOVE_SURE}</legend>
      <button type="button" class="btn" onClick={remove}>
        {REMOVE_FOR_GOOD}
      </button>
      <button type="button" class="btn quiet" ref={(button) => button?.focus()} onClick={onKeep}>
        {KEEP_IT}
      </button>
    </fieldset>
  );
}
