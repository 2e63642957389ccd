import { describe, expect, test, vi } from "vitest";
import type { Engine } from "../../../dashboard/local/engine.ts";
import { createOnDevice } from "../../../dashboard/local/onDevice.ts";
import { watchWith } from "../../../dashboard/offline/begin.ts";

/** An engine that breaks at its first question, or answers. */
function engine(breaks: boolean): Engine {
  let gone = false;
  return {
    ask: async () => {
      gone = breaks;
      if (breaks) throw new Error("out of memory");
      return { status: 200, body: "{}" };
    },
    isGone: () => gone,
  };
}

/** Engines in the order in which they are started. */
const started = (...engines: Engine[]) => {
  const left = [...engines];
  const start = vi.fn(async () => {
    const next = left.shift();
    if (next === undefined) throw new Error("cannot start");
    return next;
  });
  return { start, onDevice: createOnDevice(start, false) };
};
const ask = async (one: Engine) => void (await one.ask({ method: "GET", path: "/health", body: null }));

describe("the watch over the server", () => {
  test("stands with the engine that answers", async () => {
    const { start, onDevice } = started(engine(false));
    expect(await watchWith(onDevice.begin, ask)).toBe(true);
    expect(start).toHaveBeenCalledTimes(1);
  });

  test("stands with a second engine where the first broke before its answer", async () => {
    const { start, onDevice } = started(engine(true), engine(false));
    expect(await watchWith(onDevice.begin, ask)).toBe(true);
    expect(start).toHaveBeenCalledTimes(2);
  });

  test("is given up without an error where engines go on breaking, or none starts", async () => {
    const { start, onDevice } = started(engine(true), engine(true), engine(false));
    expect(await watchWith(onDevice.begin, ask)).toBe(false);
    expect(start).toHaveBeenCalledTimes(2);
    expect(await watchWith(started().onDevice.begin, ask)).toBe(false);
  });
});
