import { signal } from "@preact/signals";
import { isRecord } from "../answers/parsed.ts";
import { browserStore, type Shelf, shelf } from "./shelf.ts";

/** How the buttons behave. */
export interface Handling {
  /** Larger buttons. */
  readonly gloves: boolean;
  /** Single keys answer, take back and find. */
  readonly keys: boolean;
}

const place = shelf(browserStore(), "spokeworth.handling");

/** How the buttons behaved last; nonsense is left out. */
export function keptHandling(from: Shelf): Handling {
  const kept = from.read();
  const value = typeof kept === "object" && isRecord(kept.value) ? kept.value : {};
  return { gloves: value.gloves === true, keys: value.keys !== false };
}

export const handling = signal<Handling>(keptHandling(place));

export function setHandling(next: Handling): void {
  handling.value = next;
  place.write(next);
}
