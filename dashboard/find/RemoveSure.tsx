import { askingOf, ownFinds } from "../state/finds.ts";
import { REMOVING } from "../words/removing.ts";

interface RemoveSureProps {
  /** Id of the find. */
  readonly id: string;
  readonly onKeep: () => void;
  readonly onRemoved: () => void;
  /** One of several such questions: it names its find to whoever does not see the row. */
  readonly name?: string;
}

/** Asks before a find of one's own is removed: there is no way back. The focus is on keeping it. */
export function RemoveSure({ id, onKeep, onRemoved, name = "" }: RemoveSureProps) {
  const remove = () => {
    ownFinds.remove(id);
    askingOf(id).stop();
    onRemoved();
  };
  return (
    <fieldset class="acts">
      <legend class="sr">
        {REMOVING.sure} {name}
      </legend>
      <button type="button" class="btn" onClick={remove}>
        {REMOVING.remove}
      </button>
      <button type="button" class="btn quiet" ref={(button) => button?.focus()} onClick={onKeep}>
        {REMOVING.keep}
      </button>
    </fieldset>
  );
}
