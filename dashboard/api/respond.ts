import { type OnDevice, onDevice as ownDevice } from "../local/onDevice.ts";
import type { Question } from "../local/question.ts";
import { reachable } from "./reception.ts";

/** An answer of the API, and whether the engine in this browser worked it out. */
export interface Responded {
  readonly response: Response;
  readonly here: boolean;
}

/**
 * Puts a question to the engine in this browser where it runs, else to the server; and then to the engine all the same
 * where it is ready before the server has answered, or where no answer comes.
 * @throws where neither answers, or nobody waits any more
 */
export async function respond(
  question: Question,
  signal?: AbortSignal,
  onDevice: OnDevice = ownDevice,
): Promise<Responded> {
  // Abort is told once: who asks afterwards hears nothing of it.
  signal?.throwIfAborted();
  const first = onDevice.first();
  if (first !== null) {
    try {
      return await here(first, question, signal);
    } catch {
      signal?.throwIfAborted();
    }
  }
  const unwanted = new AbortController();
  signal?.addEventListener("abort", () => unwanted.abort(), { once: true });
  const server = fromServer(question, unwanted.signal).catch(() => {
    unwanted.signal.throwIfAborted();
    return here(onDevice.begin(), question, unwanted.signal);
  });
  const sooner = here(onDevice.ready, question, unwanted.signal).catch(() => server);
  try {
    return await Promise.race([server, sooner]);
  } finally {
    unwanted.abort();
  }
}

async function here(
  engine: ReturnType<OnDevice["begin"]>,
  question: Question,
  signal?: AbortSignal,
): Promise<Responded> {
  const { status, body } = await (await engine).ask(question, signal);
  return { response: new Response(body, { status }), here: true };
}

/** What a host says that could not reach the service behind it: no answer of ours. */
const NOT_OURS = new Set([502, 503, 504]);

async function fromServer({ method, path, body }: Question, signal: AbortSignal): Promise<Responded> {
  const headers = { "Content-Type": "application/json" };
  try {
    const response = await fetch(
      path,
      body === null ? { method, signal } : { method, headers, body, signal },
    );
    if (NOT_OURS.has(response.status)) throw new Error(`the host answered ${response.status}`);
    // The whole of it before it counts as come: the signal may go halfway.
    const text = await response.text();
    reachable.value = true;
    return { response: new Response(text, { status: response.status }), here: false };
  } catch (error) {
    if (!signal.aborted) reachable.value = false;
    throw error;
  }
}
