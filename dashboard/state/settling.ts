/** Wait after a keystroke or a step of a slider, so that typing a number is one question, in milliseconds. */
const SETTLE_MS = 250;

/** Controls that change with every keystroke or every step of a drag, on the way to what is meant. */
const IN_STEPS = "input:not([type=radio], [type=checkbox], [type=button]), textarea";

let inSteps = false;

/** How long to wait before what the user did last is asked about: not at all after a click, a while after a keystroke. */
export function settleMs(): number {
  return inSteps ? SETTLE_MS : 0;
}

/** Keeps an eye on how the user changes things. */
export function followHands(page: Pick<Document, "addEventListener"> = document): void {
  const note = ({ target }: Event) => {
    inSteps = (target as Element | null)?.matches?.(IN_STEPS) ?? false;
  };
  // Before the page's own listeners: by then it is known.
  page.addEventListener("input", note, { capture: true });
  page.addEventListener("click", note, { capture: true });
}
