import { computed, signal } from "@preact/signals";
import { reference } from "./reference.ts";
import { browserStore, type Shelf, shelf } from "./shelf.ts";

const place = shelf(browserStore(), "spokeworth.goal");
const chosen = signal<number | null>(keptGoal(place));

/** The goal that was kept; null where none was, or nonsense. */
export function keptGoal(from: Shelf): number | null {
  const kept = from.read();
  return typeof kept === "object" && isGoal(kept.value) ? kept.value : null;
}

/** Whether a value can be what one more hour must earn. */
export function isGoal(value: unknown): value is number {
  return typeof value === "number" && Number.isFinite(value) && value >= 0 && value <= 500;
}

/** What one more hour must earn: the user's own, else the catalogue's; null until either is known. */
export const goal = computed(() => chosen.value ?? reference.value?.defaults.hourlyGoal ?? null);

/** Sets the goal and keeps it. */
export function setGoal(value: number): void {
  chosen.value = value;
  place.write(value);
}
