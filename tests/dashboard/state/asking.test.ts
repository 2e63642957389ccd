import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Outcome } from "../../../dashboard/api/client.ts";
import type { Appraisal, AppraisalBody } from "../../../dashboard/api/types.ts";
import { withGoal } from "../../../dashboard/finds/find.ts";
import { createAsking } from "../../../dashboard/state/asking.ts";
import { termsOf } from "../../../dashboard/state/terms.ts";
import { appraisal } from "../fixtures/appraisal.ts";

const body = (price: number) => ({ find: { purchase: { price } } }) as AppraisalBody;
const answer = (version: string) => appraisal({ dataVersion: version });

/** An API whose answers come when the test says so. */
function slowApi() {
  const asked: AppraisalBody[] = [];
  const answers: ((outcome: Outcome<Appraisal>) => void)[] = [];
  const signals: AbortSignal[] = [];
  const asking = createAsking<AppraisalBody, Appraisal>((question, signal) => {
    asked.push(question);
    signals.push(signal);
    return new Promise((resolve) => answers.push(resolve));
  });
  const give = async (turn: number, outcome: Outcome<Appraisal>) => {
    answers[turn]?.(outcome);
    await vi.advanceTimersByTimeAsync(0);
  };
  return { asking, asked, signals, give };
}

describe("the conversation about a find", () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  test("typing a number is one question", async () => {
    const { asking, asked } = slowApi();
    for (const price of [1, 12, 120]) {
      asking.ask(body(price), 250);
      await vi.advanceTimersByTimeAsync(100);
    }
    await vi.advanceTimersByTimeAsync(300);
    expect(asked).toEqual([body(120)]);
  });

  test("an older answer that comes late is dropped", async () => {
    const { asking, signals, give } = slowApi();
    asking.ask(body(1), 0);
    await vi.advanceTimersByTimeAsync(0);
    asking.ask(body(2), 0);
    await vi.advanceTimersByTimeAsync(0);
    expect(signals[0]?.aborted).toBe(true);
    await give(1, { ok: answer("second") });
    await give(0, { ok: answer("first") });
    expect(asking.answer.value?.dataVersion).toBe("second");
    expect(asking.status.value).toBe("settled");
  });

  test("the last answer stays while the next is worked out, and that is said after a while", async () => {
    const { asking, give } = slowApi();
    asking.ask(body(1), 0);
    await vi.advanceTimersByTimeAsync(0);
    await give(0, { ok: answer("first") });
    asking.ask(body(2), 0);
    await vi.advanceTimersByTimeAsync(399);
    expect([asking.status.value, asking.answer.value?.dataVersion]).toEqual(["asking", "first"]);
    await vi.advanceTimersByTimeAsync(2);
    expect([asking.status.value, asking.answer.value?.dataVersion]).toEqual(["slow", "first"]);
  });

  test("a fault keeps the last answer, and the same question may be put again", async () => {
    const { asking, asked, give } = slowApi();
    asking.ask(body(1), 0);
    await vi.advanceTimersByTimeAsync(0);
    await give(0, { ok: answer("first") });
    asking.ask(body(2), 0);
    await vi.advanceTimersByTimeAsync(0);
    await give(1, { fault: { kind: "no-signal" } });
    expect(asking.fault.value).toEqual({ kind: "no-signal" });
    expect(asking.answer.value?.dataVersion).toBe("first");
    asking.again();
    await vi.advanceTimersByTimeAsync(0);
    await give(2, { ok: answer("third") });
    expect(asked.at(-1)).toEqual(body(2));
    expect(asking.fault.value).toBeNull();
    expect(asking.answer.value?.dataVersion).toBe("third");
  });

  test("an answer keeps the goal and the price it was asked with, until a newer one comes", async () => {
    const { asking, give } = slowApi();
    expect(termsOf(asking, 10)).toEqual({ goal: 10, price: undefined, paid: false, ownParts: new Set() });
    asking.ask(withGoal(body(1), 10), 0);
    await vi.advanceTimersByTimeAsync(0);
    await give(0, { ok: answer("first") });
    asking.ask(withGoal(body(2), 20), 0);
    await vi.advanceTimersByTimeAsync(0);
    expect(termsOf(asking, 20)).toEqual({ goal: 10, price: 1, paid: false, ownParts: new Set() });
    await give(1, { fault: { kind: "no-signal" } });
    expect(termsOf(asking, 20)).toEqual({ goal: 10, price: 1, paid: false, ownParts: new Set() });
    asking.again();
    await vi.advanceTimersByTimeAsync(0);
    await give(2, { ok: answer("second") });
    expect(termsOf(asking, 20)).toEqual({ goal: 20, price: 2, paid: false, ownParts: new Set() });
  });

  test("the same question is not put twice", async () => {
    const { asking, asked, give } = slowApi();
    asking.ask(body(1), 0);
    await vi.advanceTimersByTimeAsync(0);
    await give(0, { ok: answer("first") });
    asking.ask(body(1), 0);
    await vi.advanceTimersByTimeAsync(500);
    expect(asked).toHaveLength(1);
  });

  test("what was stopped never answers", async () => {
    const { asking, give } = slowApi();
    asking.ask(body(1), 0);
    await vi.advanceTimersByTimeAsync(0);
    asking.stop();
    await give(0, { ok: answer("first") });
    expect(asking.answer.value).toBeNull();
    expect(asking.status.value).toBe("settled");
  });
});
