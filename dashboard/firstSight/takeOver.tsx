import { hydrate, render } from "preact";
import { App } from "../App.tsx";
import { ownTask } from "../parts/ownTask.ts";
import { route } from "../state/route.ts";
import { writesAlike } from "../words/locale.ts";
import { stands } from "./stands.ts";

declare global {
  /** What was done on the first sight of the page, oldest first: kept by the script in the page. */
  var doneBefore: Event[] | undefined;
}

/** From this width on a page may differ from its first sight, in pixels. */
const DRAWN_BELOW = 600;

/**
 * Draws the dashboard. Where the first sight of the page is seen, it is brought to life in its place once everything
 * stands that the page shows, or the user goes elsewhere; what was done on it before is then done again.
 * @param app where the dashboard is drawn
 * @param first the first sight; null where the page has none
 */
export async function takeOver(app: Element, first: Element | null): Promise<void> {
  if (first === null || document.documentElement.dataset.sight === "none") {
    first?.remove();
    app.replaceChildren();
    render(<App />, app);
    return;
  }
  const opened = route.peek();
  const came = await Promise.race([stands(opened), left(opened)]);
  await ownTask();
  const done = (globalThis.doneBefore ?? []).map(undone);
  globalThis.doneBefore = undefined;
  app.remove();
  first.id = "app";
  // The same to the letter on a phone, unless it is another page or an answer failed: then only what is not the same text is looked at.
  if (innerWidth < DRAWN_BELOW && writesAlike() && came && route.peek() === opened) hydrate(<App />, first);
  else render(<App />, first);
  for (const one of done) {
    // One after the other, as they were done: the page answers each before the next.
    await ownTask();
    if (route.peek().page === opened.page) doAgain(one);
  }
}

/** Comes when the user goes to another page: what was drawn is not what is to be seen. */
function left(opened: unknown): Promise<false> {
  return new Promise((resolve) => {
    route.subscribe((here) => here !== opened && resolve(false));
  });
}

type Typed = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

/** Something done, with what stands in its field: drawing the page empties it. */
interface Done {
  readonly kind: "click" | "typed";
  readonly on: HTMLElement;
  readonly value: string;
}

/** Reads what was done, and takes back what the browser did of its own accord, so that it can be done again. */
function undone({ type, target }: Event): Done | null {
  if (!(target instanceof HTMLElement)) return null;
  if (type === "input") return isTyped(target) ? { kind: "typed", on: target, value: target.value } : null;
  // A link has led away already; a click on a label comes once more as one on its field.
  if (target.closest("a") !== null || (target.closest("label") !== null && !isField(target))) return null;
  if (target instanceof HTMLInputElement) target.checked = target.defaultChecked;
  const fold = target.closest("summary")?.parentElement;
  if (fold instanceof HTMLDetailsElement) fold.open = !fold.open;
  return { kind: "click", on: target, value: "" };
}

function doAgain(done: Done | null): void {
  if (done === null || !done.on.isConnected) return;
  if (done.kind === "click") done.on.click();
  else if (isTyped(done.on)) {
    done.on.value = done.value;
    for (const type of ["input", "change"]) done.on.dispatchEvent(new Event(type, { bubbles: true }));
  }
}

function isField(element: Element): element is Typed {
  return (
    element instanceof HTMLInputElement ||
    element instanceof HTMLTextAreaElement ||
    element instanceof HTMLSelectElement
  );
}

/** A field whose value is typed or chosen, not clicked. */
function isTyped(element: Element): element is Typed {
  return isField(element) && element.type !== "radio" && element.type !== "checkbox";
}
