import type { ComponentChildren } from "preact";
import { useEffect, useId, useRef } from "preact/hooks";
import { CLOSE } from "../words/dialog.ts";

interface DialogProps {
  readonly title: string;
  /** After it has closed: by its button, by Escape, or by a press beside it. */
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** A box over the page that must be closed before the page goes on. The browser keeps the focus inside, and gives it back. */
export function Dialog({ title, onClose, children }: DialogProps) {
  const box = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => box.current?.showModal(), []);
  const close = () => box.current?.close();
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape closes it, as the browser does by itself
    <dialog
      ref={box}
      class="dialog"
      aria-labelledby={id}
      onClose={onClose}
      onClick={(event) => event.target === box.current && close()}
    >
      <div class="dialogbody">
        <h2 id={id} tabIndex={-1} autofocus>
          {title}
        </h2>
        {children}
        <button type="button" class="btn quiet" onClick={close}>
          {CLOSE}
        </button>
      </div>
    </dialog>
  );
}
