import type { FromEngine, Question, Reply } from "./question.ts";

/** The engine in a thread of its own. */
export interface Engine {
  /** Fails where the engine is gone, or with the signal's reason where it was aborted before its turn came. */
  ask(question: Question, signal?: AbortSignal): Promise<Reply>;
  /** Whether it broke: then another has to be started. */
  isGone(): boolean;
}

/** The part of a Web Worker that is used here. */
export type Thread = Pick<Worker, "postMessage" | "terminate" | "addEventListener">;

interface Waiting {
  readonly question: Question;
  readonly signal: AbortSignal | undefined;
  readonly resolve: (reply: Reply) => void;
  readonly reject: (why: unknown) => void;
}

/**
 * Starts the engine. It has one question at a time, so that one that nobody waits for any more is dropped before it
 * costs anything.
 * @throws where it cannot start: no modules in threads, or its script or tables did not come
 */
export function startEngine(thread: Thread = ownThread()): Promise<Engine> {
  const waiting: Waiting[] = [];
  let asked: Waiting | null = null;
  let gone: Error | null = null;

  function next(): void {
    asked = null;
    for (let one = waiting.shift(); one !== undefined; one = waiting.shift()) {
      if (one.signal?.aborted) {
        one.reject(one.signal.reason);
        continue;
      }
      asked = one;
      thread.postMessage(one.question);
      return;
    }
  }

  function end(why: Error): void {
    gone = why;
    thread.terminate();
    const left = asked === null ? waiting.splice(0) : [asked, ...waiting.splice(0)];
    asked = null;
    for (const one of left) one.reject(why);
  }

  const engine: Engine = {
    ask: (question, signal) =>
      new Promise((resolve, reject) => {
        if (gone !== null) return reject(gone);
        waiting.push({ question, signal, resolve, reject });
        if (asked === null) next();
      }),
    isGone: () => gone !== null,
  };
  return new Promise((resolve, reject) => {
    thread.addEventListener("message", (event) => {
      const message = (event as MessageEvent<FromEngine>).data;
      if (message.kind === "ready") return resolve(engine);
      if (message.kind === "failed") {
        end(new Error(message.why));
        return reject(gone);
      }
      asked?.resolve(message.reply);
      next();
    });
    const broken = (event: Event) => {
      event.preventDefault();
      end(new Error("the engine's script did not come, or failed"));
      reject(gone);
    };
    thread.addEventListener("error", broken);
    thread.addEventListener("messageerror", broken);
  });
}

function ownThread(): Thread {
  return new Worker(new URL("./engine.worker.ts", import.meta.url), { type: "module", name: "engine" });
}
