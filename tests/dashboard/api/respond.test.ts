import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { reachable } from "../../../dashboard/api/reception.ts";
import { respond } from "../../../dashboard/api/respond.ts";
import type { Engine } from "../../../dashboard/local/engine.ts";
import { createOnDevice } from "../../../dashboard/local/onDevice.ts";
import type { Question } from "../../../dashboard/local/question.ts";

const question: Question = { method: "POST", path: "/v1/appraisals", body: "{}" };
const engine: Engine = { ask: async () => ({ status: 200, body: "from here" }), isGone: () => false };
const none = () => createOnDevice(() => Promise.reject(new Error("cannot start")), false);
const fetched = vi.fn<typeof fetch>();

/** The network brings an answer when the test says so. */
function network() {
  let bring = (_: Response) => {};
  let cut = () => {};
  fetched.mockImplementation(
    (_, init) =>
      new Promise((resolve, reject) => {
        bring = resolve;
        cut = () => reject(new TypeError("no network"));
        init?.signal?.addEventListener("abort", () => reject(init.signal?.reason));
      }),
  );
  return { bring: (text: string, status = 200) => bring(new Response(text, { status })), cut: () => cut() };
}

async function told(responded: ReturnType<typeof respond>) {
  const { response, here } = await responded;
  return { status: response.status, text: await response.text(), here };
}

describe("who answers", () => {
  beforeEach(() => {
    vi.stubGlobal("fetch", fetched);
    fetched.mockReset();
    reachable.value = true;
  });
  afterEach(() => vi.unstubAllGlobals());

  test("the server, on a first visit", async () => {
    const { bring } = network();
    const answer = told(respond(question, undefined, none()));
    bring('{"title":"refused"}', 422);
    expect(await answer).toEqual({ status: 422, text: '{"title":"refused"}', here: false });
    expect(reachable.value).toBe(true);
  });

  test("nobody, where nobody waits any more before it is asked", async () => {
    const gone = AbortSignal.abort();
    const asked = vi.fn(engine.ask);
    const onDevice = createOnDevice(async () => ({ ...engine, ask: asked }), true);
    await expect(respond(question, gone, onDevice)).rejects.toBe(gone.reason);
    await expect(respond(question, gone, none())).rejects.toBe(gone.reason);
    expect(asked).not.toHaveBeenCalled();
    expect(fetched).not.toHaveBeenCalled();
    expect(reachable.value).toBe(true);
  });

  test("the engine where the pages are kept; the network is not asked", async () => {
    const onDevice = createOnDevice(async () => engine, true);
    expect(await told(respond(question, undefined, onDevice))).toMatchObject({
      text: "from here",
      here: true,
    });
    expect(fetched).not.toHaveBeenCalled();
  });

  test("the engine that gets ready while the network hangs, and the network is let go", async () => {
    network();
    const onDevice = createOnDevice(async () => engine, false);
    const answer = told(respond(question, undefined, onDevice));
    await onDevice.begin();
    expect(await answer).toMatchObject({ here: true });
    expect(fetched.mock.calls[0]?.[1]?.signal?.aborted).toBe(true);
    // Let go, not failed.
    expect(reachable.value).toBe(true);
  });

  test("the engine, begun for it, where no answer comes, or only the host's word that the service is gone", async () => {
    const { cut } = network();
    const first = told(
      respond(
        question,
        undefined,
        createOnDevice(async () => engine, false),
      ),
    );
    cut();
    expect(await first).toMatchObject({ here: true });
    expect(reachable.value).toBe(false);

    const { bring } = network();
    const second = told(
      respond(
        question,
        undefined,
        createOnDevice(async () => engine, false),
      ),
    );
    bring("<html>", 503);
    expect(await second).toMatchObject({ here: true });
  });

  test("the server where the engine broke", async () => {
    const broken: Engine = { ask: () => Promise.reject(new Error("broken")), isGone: () => false };
    const onDevice = createOnDevice(async () => broken, true);
    const { bring } = network();
    const answer = told(respond(question, undefined, onDevice));
    await vi.waitFor(() => expect(fetched).toHaveBeenCalled());
    bring("from there");
    expect(await answer).toMatchObject({ text: "from there", here: false });
  });

  test("nobody where neither can, and where nobody waits any more", async () => {
    const { cut } = network();
    const lost = respond(question, undefined, none());
    cut();
    await expect(lost).rejects.toThrow("cannot start");

    network();
    const gone = new AbortController();
    const start = vi.fn(async () => engine);
    const unwanted = respond(question, gone.signal, createOnDevice(start, false));
    gone.abort();
    await expect(unwanted).rejects.toMatchObject({ name: "AbortError" });
    expect(start).not.toHaveBeenCalled();
  });
});
