import { useState } from "preact/hooks";
import { type Telling, target } from "./place.ts";

/** What a mark says; null where a place has no mark. */
export type MarkTold = Omit<Telling, "at"> | null;

/**
 * The marks of a chart as one tab stop: arrows, Home and End move between them and speak where they land, Escape and leaving let go, Enter opens. A pointer
 * moves without speaking.
 */
export function useMarks<T extends MarkTold>(tellings: readonly T[], onPick?: (mark: number) => void) {
  const [active, setActive] = useState<number | null>(null);
  const [spoken, setSpoken] = useState("");

  function move(to: number | null): void {
    setActive(to);
    const told = to === null ? null : (tellings[to] ?? null);
    setSpoken(told === null ? "" : `${told.title}. ${told.lines.join(". ")}`);
  }

  function onKeyDown(event: KeyboardEvent): void {
    const to = target(event.key, active, tellings);
    if (to !== undefined) {
      event.preventDefault();
      move(to);
    } else if (event.key === "Enter" && active !== null) onPick?.(active);
  }

  return {
    active,
    telling: active === null ? null : (tellings[active] ?? null),
    spoken,
    point: setActive,
    onKeyDown,
    onBlur: () => move(null),
    onPointerLeave: () => setActive(null),
  };
}
