import { describe, expect, test } from "vitest";
import { followHands, settleMs } from "../../../dashboard/state/settling.ts";

/** A page whose controls are what the test says. */
function page() {
  const listeners = new Map<string, (event: Event) => void>();
  followHands({
    addEventListener: (type: string, listener: (event: Event) => void) => void listeners.set(type, listener),
  } as unknown as Document);
  /** Something happens to a control: whether it changes in steps is what its selector says. */
  return (type: "input" | "click", inSteps: boolean) =>
    listeners.get(type)?.({ target: { matches: () => inSteps } } as unknown as Event);
}

describe("what is asked at once, and what waits", () => {
  test("a click asks at once, a keystroke waits, and the next click asks at once again", () => {
    const happens = page();
    expect(settleMs()).toBe(0);
    happens("input", true);
    expect(settleMs()).toBeGreaterThan(100);
    happens("click", false);
    expect(settleMs()).toBe(0);
  });

  test("an event without an element waits for nothing", () => {
    const happens = page();
    happens("input", true);
    followHands({
      addEventListener: (_: string, listener: (event: Event) => void) => listener({ target: null } as Event),
    } as unknown as Document);
    expect(settleMs()).toBe(0);
  });
});
