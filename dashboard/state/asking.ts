import { batch, type ReadonlySignal, signal } from "@preact/signals";
import type { Outcome } from "../api/client.ts";
import type { Fault } from "../api/fault.ts";
import { settleMs } from "./settling.ts";

/** An answer that takes longer than this is announced as being worked out. */
const SLOW_MS = 400;

export type Put<Body, Answer> = (body: Body, signal: AbortSignal) => Promise<Outcome<Answer>>;

/** A conversation with the API about one matter: a find, or a set of them. The last answer stays until a newer one comes. */
export interface Asking<Body, Answer> {
  readonly answer: ReadonlySignal<Answer | null>;
  /** The question that the answer answers. */
  readonly answered: ReadonlySignal<Body | null>;
  /** Whether the answer was worked out in this browser rather than by the server. */
  readonly here: ReadonlySignal<boolean>;
  /** asking: a newer answer is under way; slow: and has been for a while. */
  readonly status: ReadonlySignal<"settled" | "asking" | "slow">;
  readonly fault: ReadonlySignal<Fault | null>;
  /** Asks unless the same question was asked last and did not fail. Of several questions only the newest is answered. */
  ask(body: Body, waitMs?: number): void;
  /** Asks the last question again. */
  again(): void;
  /** Forgets the question under way. */
  stop(): void;
}

/** @param send puts the question to the API */
export function createAsking<Body, Answer>(send: Put<Body, Answer>): Asking<Body, Answer> {
  const answer = signal<Answer | null>(null);
  const answered = signal<Body | null>(null);
  const here = signal(false);
  const status = signal<"settled" | "asking" | "slow">("settled");
  const fault = signal<Fault | null>(null);
  let asked = "";
  let turn = 0;
  let settling: ReturnType<typeof setTimeout> | undefined;
  let slowness: ReturnType<typeof setTimeout> | undefined;
  let controller = new AbortController();

  function stop(): void {
    turn += 1;
    clearTimeout(settling);
    clearTimeout(slowness);
    controller.abort();
    status.value = "settled";
  }

  function ask(body: Body, waitMs = settleMs()): void {
    const question = JSON.stringify(body);
    if (question === asked && fault.peek() === null) return;
    stop();
    asked = question;
    const mine = turn;
    status.value = "asking";
    settling = setTimeout(() => put(body, mine), waitMs);
  }

  async function put(body: Body, mine: number): Promise<void> {
    slowness = setTimeout(() => {
      status.value = "slow";
    }, SLOW_MS);
    controller = new AbortController();
    const outcome = await send(body, controller.signal);
    // An answer to an older question, whenever it comes, is dropped.
    if (mine !== turn) return;
    clearTimeout(slowness);
    batch(() => {
      if ("ok" in outcome) {
        answer.value = outcome.ok;
        answered.value = body;
        here.value = outcome.here ?? false;
      }
      fault.value = "ok" in outcome ? null : outcome.fault;
      status.value = "settled";
    });
  }

  function again(): void {
    if (asked === "") return;
    const body = JSON.parse(asked) as Body;
    asked = "";
    ask(body, 0);
  }

  return { answer, answered, here, status, fault, ask, again, stop };
}
