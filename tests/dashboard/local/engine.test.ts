import { describe, expect, test } from "vitest";
import { startEngine, type Thread } from "../../../dashboard/local/engine.ts";
import { createOnDevice } from "../../../dashboard/local/onDevice.ts";
import type { FromEngine, Question } from "../../../dashboard/local/question.ts";

const ask = (path: string): Question => ({ method: "GET", path, body: null });
const replied = (body: string): FromEngine => ({ kind: "reply", reply: { status: 200, body } });

/** A thread that says what the test makes it say. */
function thread() {
  const events = new EventTarget();
  const asked: string[] = [];
  let ended = false;
  const own = {
    postMessage: ({ path }: Question) => void asked.push(path),
    terminate: () => {
      ended = true;
    },
    addEventListener: events.addEventListener.bind(events),
  } as unknown as Thread;
  const say = (data: FromEngine) => events.dispatchEvent(Object.assign(new Event("message"), { data }));
  const fail = () => events.dispatchEvent(new Event("error"));
  return { own, asked, say, fail, hasEnded: () => ended };
}

describe("the engine's thread", () => {
  test("has one question at a time, in the order they came, each with its own reply", async () => {
    const { own, asked, say } = thread();
    const starting = startEngine(own);
    say({ kind: "ready" });
    const engine = await starting;
    const first = engine.ask(ask("/1"));
    const second = engine.ask(ask("/2"));
    expect(asked).toEqual(["/1"]);
    say(replied("one"));
    expect(asked).toEqual(["/1", "/2"]);
    say(replied("two"));
    expect([(await first).body, (await second).body]).toEqual(["one", "two"]);
  });

  test("never sees a question that nobody waits for any more", async () => {
    const { own, asked, say } = thread();
    const starting = startEngine(own);
    say({ kind: "ready" });
    const engine = await starting;
    const gone = new AbortController();
    void engine.ask(ask("/1"));
    const dropped = engine.ask(ask("/2"), gone.signal);
    const last = engine.ask(ask("/3"));
    gone.abort();
    say(replied("one"));
    say(replied("three"));
    await expect(dropped).rejects.toMatchObject({ name: "AbortError" });
    expect((await last).body).toBe("three");
    expect(asked).toEqual(["/1", "/3"]);
  });

  test("that cannot start, or breaks, leaves no question without an end", async () => {
    const tableless = thread();
    const starting = startEngine(tableless.own);
    tableless.say({ kind: "failed", why: "the tables did not come: 404" });
    await expect(starting).rejects.toThrow("the tables did not come: 404");
    expect(tableless.hasEnded()).toBe(true);

    const breaking = thread();
    const started = startEngine(breaking.own);
    breaking.say({ kind: "ready" });
    const engine = await started;
    const open = engine.ask(ask("/1"));
    const waiting = engine.ask(ask("/2"));
    breaking.fail();
    await expect(open).rejects.toThrow("the engine's script did not come, or failed");
    await expect(waiting).rejects.toThrow("the engine's script did not come, or failed");
    await expect(engine.ask(ask("/3"))).rejects.toThrow("the engine's script did not come, or failed");
  });
});

describe("the engine in this browser", () => {
  const engine = { ask: () => Promise.reject(new Error("not asked here")), isGone: () => false };

  test("is begun once for all, and again after it failed", async () => {
    let starts = 0;
    const start = async () => {
      starts += 1;
      if (starts === 1) throw new Error("no network");
      return engine;
    };
    const onDevice = createOnDevice(start, false);
    expect(onDevice.first()).toBeNull();
    await expect(onDevice.begin()).rejects.toThrow("no network");
    expect(await Promise.all([onDevice.begin(), onDevice.begin(), onDevice.ready])).toEqual([
      engine,
      engine,
      engine,
    ]);
    expect(starts).toBe(2);
    expect(await onDevice.first()).toBe(engine);
  });

  test("is begun anew after it broke", async () => {
    const broken = { ...engine, isGone: () => true };
    const engines = [broken, engine];
    const onDevice = createOnDevice(async () => engines.shift() ?? engine, false);
    expect(await onDevice.begin()).toBe(broken);
    expect(await onDevice.first()).toBe(engine);
    expect(await onDevice.begin()).toBe(engine);
  });

  test("comes first from the beginning where the browser keeps the pages", async () => {
    expect(await createOnDevice(async () => engine, true).first()).toBe(engine);
  });
});
