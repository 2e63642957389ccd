import { type Engine, startEngine } from "./engine.ts";

/** The engine in this browser, from not begun to ready. */
export interface OnDevice {
  /** Begins where it has not, or broke; the same engine to everyone. Fails where this browser cannot run it. */
  begin(): Promise<Engine>;
  /** The engine, where there is no need to ask the server first: it runs, or all it needs lies in this browser. */
  first(): Promise<Engine> | null;
  /** Comes once the engine is ready; never, where it does not get so far. */
  readonly ready: Promise<Engine>;
}

/**
 * @param start starts it; a start that failed is tried again at the next `begin`
 * @param kept whether the browser holds the pages' files, so that starting needs no network
 */
export function createOnDevice(start: () => Promise<Engine>, kept: boolean): OnDevice {
  let begun: Promise<Engine> | null = null;
  let running: Engine | null = null;
  let tell: (engine: Engine) => void;
  const ready = new Promise<Engine>((resolve) => {
    tell = resolve;
  });

  function begin(): Promise<Engine> {
    if (running?.isGone()) {
      running = null;
      begun = null;
    }
    begun ??= start().then(
      (engine) => {
        running = engine;
        tell(engine);
        return engine;
      },
      (why) => {
        begun = null;
        throw why;
      },
    );
    return begun;
  }

  return { begin, first: () => (running !== null || kept ? begin() : null), ready };
}

/** This browser's own. */
export const onDevice = createOnDevice(
  () => startEngine(),
  globalThis.navigator?.serviceWorker?.controller != null,
);
