import type { ComponentChildren } from "preact";
import { useId, useLayoutEffect, useRef, useState } from "preact/hooks";
import { GLOSSARY, type TermId } from "../words/glossary.ts";

/** Room between a word and the box that explains it, and between the box and the edge of the screen, px. */
const GAP = 8;

/**
 * A word that can be pressed to have it explained where it stands. The box is a popover of the browser's: it takes the
 * focus, so that it is read out; Escape or a press elsewhere closes it and gives the focus back. It is empty until it is
 * opened, so that no explanation stands in the middle of a sentence for whoever reads the page as text.
 */
export function Term({ of, children }: { of: TermId; children: ComponentChildren }) {
  const id = useId();
  const word = useRef<HTMLButtonElement>(null);
  const box = useRef<HTMLSpanElement>(null);
  const [open, setOpen] = useState(false);
  const { name, text } = GLOSSARY[of];
  useLayoutEffect(() => {
    if (open && word.current !== null && box.current !== null) showBeside(word.current, box.current);
  }, [open]);
  // `popovertarget` tells the browser whose box it is; opening waits until there is something in it.
  const toggle = (event: Event) => {
    event.preventDefault();
    if (open) box.current?.hidePopover();
    else setOpen(true);
  };
  return (
    <>
      <dfn>
        <button ref={word} type="button" class="term" popovertarget={id} onClick={toggle}>
          {children}
        </button>
      </dfn>
      <span
        ref={box}
        id={id}
        popover="auto"
        role="dialog"
        aria-label={name}
        tabIndex={-1}
        autofocus
        class="termbox"
        onToggle={(event) => event.newState === "closed" && setOpen(false)}
      >
        {open && (
          <>
            <b>{name}</b>
            <span>{text}</span>
          </>
        )}
      </span>
    </>
  );
}

/** Opens a box below a word where there is room, else above it; never beyond the screen. */
function showBeside(word: HTMLElement, box: HTMLElement): void {
  const at = word.getBoundingClientRect();
  // Put there before it opens: the focus it takes would else scroll the page away.
  put(box, at.left, at.top);
  box.showPopover();
  const { width, height } = box.getBoundingClientRect();
  const rightmost = document.documentElement.clientWidth - width - GAP;
  const below = at.bottom + GAP;
  const top = below + height <= innerHeight ? below : Math.max(GAP, at.top - GAP - height);
  put(box, Math.max(GAP, Math.min(at.left, rightmost)), top);
}

/** Sets the place of a box that scrolls with the page, px from the corner of the screen. */
function put(box: HTMLElement, left: number, top: number): void {
  box.style.left = `${scrollX + left}px`;
  box.style.top = `${scrollY + top}px`;
}

/** A sentence in which the first words that fit are explained; as it is where none do. */
export function Explained({ text, words, of }: { text: string; words: RegExp; of: TermId }) {
  const found = words.exec(text);
  if (found === null) return <>{text}</>;
  const [said] = found;
  return (
    <>
      {text.slice(0, found.index)}
      <Term of={of}>{said}</Term>
      {text.slice(found.index + said.length)}
    </>
  );
}
