import { useEffect, useRef } from "preact/hooks";

/** What the keys do: 1 to 6 a level, 0 can't tell, U undo. Each place on the page minds its own. */
export interface KeyActions {
  /** @param index from nought */
  level?(index: number): void;
  cannotTell?(): void;
  undo?(): void;
}

/** Answers by single keys, but never while something is typed or another key is held with them. */
export function useKeys(on: boolean, actions: KeyActions): void {
  const latest = useRef({ on, actions });
  latest.current = { on, actions };
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.repeat || event.metaKey || event.ctrlKey || event.altKey) return;
      const { on: isOn, actions: now } = latest.current;
      if (!isOn || isTyping(event.target)) return;
      if (/^[1-6]$/.test(event.key)) now.level?.(Number(event.key) - 1);
      else if (event.key === "0") now.cannotTell?.();
      else if (event.key === "u" || event.key === "U") now.undo?.();
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, []);
}

function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return target.type !== "checkbox" && target.type !== "radio";
  return (
    target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement || target.isContentEditable
  );
}
