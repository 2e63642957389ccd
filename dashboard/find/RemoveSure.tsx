import { REMOVING } from "../words/removing.ts";

interface RemoveSureProps {
  readonly onKeep: () => void;
  readonly onRemove: () => void;
  /** One of several such questions: it names its find to whoever does not see the row. */
  readonly name?: string;
}

/** Asks before a find of one's own is removed: there is no way back. The focus is on keeping it. */
export function RemoveSure({ onKeep, onRemove, name = "" }: RemoveSureProps) {
  return (
    <fieldset class="acts">
      <legend class="sr">
        {REMOVING.sure} {name}
      </legend>
      <button type="button" class="btn" onClick={onRemove}>
        {REMOVING.remove}
      </button>
      <button type="button" class="btn quiet" ref={(button) => button?.focus()} onClick={onKeep}>
        {REMOVING.keep}
      </button>
    </fieldset>
  );
}
