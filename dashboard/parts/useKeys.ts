import { useEffect, useRef } from "preact/hooks";

/** What single keys do where a bike is looked at. Each place on the page minds its own. */
export interface KeyActions {
  /** 1 to 9: the level of that number, from nought. */
  level?(index: number): void;
  /** 0. */
  cannotTell?(): void;
  /** U. */
  undo?(): void;
  /** The slash. */
  find?(): void;
}

/** Single keys answer, take back and find; never while something is typed or another key is held with them. */
export function useKeys(on: boolean, actions: KeyActions): void {
  const latest = useRef({ on, actions });
  latest.current = { on, actions };
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.repeat || event.metaKey || event.ctrlKey || event.altKey) return;
      const { on: isOn, actions: now } = latest.current;
      if (!isOn || isTyping(event.target)) return;
      if (/^[1-9]$/.test(event.key)) now.level?.(Number(event.key) - 1);
      else if (event.key === "0") now.cannotTell?.();
      else if (event.key.toLowerCase() === "u") now.undo?.();
      else if (event.key === "/" && now.find !== undefined) {
        // Else the stroke would be typed into the field it opens.
        event.preventDefault();
        now.find();
      }
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, []);
}

function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return target.type !== "checkbox" && target.type !== "radio";
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}
