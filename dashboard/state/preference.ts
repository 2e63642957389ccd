import { type ReadonlySignal, signal } from "@preact/signals";
import type { Shelf } from "./shelf.ts";

/** A choice of the user's about how the screen works, kept in the browser. */
export interface Preference<T extends string> {
  readonly value: ReadonlySignal<T>;
  set(value: T): void;
}

/**
 * Opens a preference. What was never chosen, or is no longer a choice, is the first.
 * @param choices at least one
 */
export function preference<T extends string>(
  place: Shelf,
  choices: readonly [T, ...(readonly T[])],
): Preference<T> {
  const kept = place.read();
  const known = typeof kept === "object" ? choices.find((choice) => choice === kept.value) : undefined;
  const value = signal<T>(known ?? choices[0]);
  return {
    value,
    set(next) {
      value.value = next;
      place.write(next);
    },
  };
}
