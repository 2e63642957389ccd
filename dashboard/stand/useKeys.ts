import { useEffect, useRef } from "preact/hooks";

/** What single keys do on the stand. */
export interface KeyActions {
  /** 1 to 9: the level of that number, from nought, on the card that has the focus, else on the one shown first. */
  level(index: number): void;
  /** 0. */
  cannotTell(): void;
  /** U. */
  undo(): void;
  /** The slash. */
  find(): void;
}

/** Single keys answer, take back and find; never while something is typed or another key is held with them. */
export function useKeys(on: boolean, actions: KeyActions): void {
  const latest = useRef(actions);
  latest.current = actions;
  useEffect(() => {
    if (!on) return;
    const press = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.repeat || event.metaKey || event.ctrlKey || event.altKey) return;
      if (isTyping(event.target)) return;
      const { level, cannotTell, undo, find } = latest.current;
      if (/^[1-9]$/.test(event.key)) level(Number(event.key) - 1);
      else if (event.key === "0") cannotTell();
      else if (event.key.toLowerCase() === "u") undo();
      else if (event.key === "/") {
        // Else the stroke would be typed into the field it opens.
        event.preventDefault();
        find();
      }
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, [on]);
}

function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return target.type !== "checkbox" && target.type !== "radio";
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}
