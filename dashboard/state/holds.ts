import { computed, type ReadonlySignal } from "@preact/signals";
import type { Asking } from "./asking.ts";

/** Comes once a question was answered, or failed: whether it was answered. */
export async function answered({
  answer,
  fault,
  status,
}: Pick<Asking<never, unknown>, "answer" | "fault" | "status">): Promise<boolean> {
  await holds(computed(() => status.value === "settled" && (answer.value !== null || fault.value !== null)));
  return fault.peek() === null;
}

/** Comes once something holds. */
export function holds(condition: ReadonlySignal<boolean>): Promise<void> {
  return new Promise((resolve) => {
    let stop: (() => void) | undefined;
    stop = condition.subscribe((now) => {
      if (!now) return;
      resolve();
      // It may hold at once, before there is anything to stop.
      queueMicrotask(() => stop?.());
    });
  });
}
