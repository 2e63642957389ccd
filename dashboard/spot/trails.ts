import { type ReadonlySignal, signal } from "@preact/signals";
import type { Shelf } from "../state/shelf.ts";
import { parsedTrails } from "./parsedTrail.ts";
import type { Step } from "./trail.ts";

/** The trails of the finds looked at on the spot, kept on a shelf: a phone that drops the page loses no undo. */
export interface Trails {
  readonly all: ReadonlySignal<Readonly<Record<string, readonly Step[]>>>;
  of(find: string): readonly Step[];
  /** @param known ids of the finds there are: the trails of others are dropped */
  put(find: string, trail: readonly Step[], known: readonly string[]): void;
}

/** Steps kept of a find: as many as anyone walks back through. */
const MOST_STEPS = 200;

/** Opens the shelf. What cannot be read is left out: it held no answer, only the way back. */
export function openTrails(place: Shelf): Trails {
  const kept = place.read();
  const all = signal(typeof kept === "object" ? parsedTrails(kept.value) : {});
  return {
    all,
    of: (find) => all.value[find] ?? [],
    put(find, trail, known) {
      const others = Object.entries(all.value).filter(([id]) => id !== find && known.includes(id));
      all.value = { ...Object.fromEntries(others), [find]: trail.slice(-MOST_STEPS) };
      place.write({ trails: all.value });
    },
  };
}
