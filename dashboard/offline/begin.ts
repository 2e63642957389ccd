import { firstAnswer, hasAsked } from "../api/client.ts";
import type { Engine } from "../local/engine.ts";
import { onDevice } from "../local/onDevice.ts";
import { reference } from "../state/reference.ts";
import { keepPages } from "./pagesKept.ts";
import { watchServer } from "./serverWatch.ts";

/** What waits for a quiet moment waits at most so long, in milliseconds. */
const QUIET_MS = 2000;

/** What comes after the words, pictures and panels, goes first: it has so long, in milliseconds. */
const AFTER_WORDS_MS = 500;

/** A page that has its catalogue and asks nothing in this time is about no find, in milliseconds. */
const NOTHING_ASKED_MS = 2000;

/**
 * Brings the engine into this browser, and keeps the pages in it, once the first answer stands, or the page where it asks
 * nothing: so that neither slows the first sight of the page.
 */
export async function beginOffline(): Promise<void> {
  await Promise.race([firstAnswer, nothingAsked()]);
  await quiet();
  await new Promise((resolve) => setTimeout(resolve, AFTER_WORDS_MS));
  // Where it cannot start, the pages are kept all the same.
  const engine = await onDevice.begin().catch(() => null);
  const registration = await keepPages();
  if (engine === null) return;
  await watchWith(onDevice.begin, (engine) =>
    watchServer(engine, () => void registration?.update().catch(() => undefined)),
  );
}

/** An engine that broke is begun anew once; one that breaks again would do so for ever. */
const TRIES = 2;

/**
 * Watches with an engine that may break before it has said what it works from.
 * @param begin the engine, anew where it broke
 * @param watch fails where the engine does not answer
 * @returns whether the watch stands; where no engine runs there is nothing to watch for
 */
export async function watchWith(
  begin: () => Promise<Engine>,
  watch: (engine: Engine) => Promise<void>,
): Promise<boolean> {
  for (let tries = 0; tries < TRIES; tries++) {
    const engine = await begin().catch(() => null);
    if (engine === null) return false;
    try {
      await watch(engine);
      return true;
    } catch {
      // It broke: the next is another.
    }
  }
  return false;
}

/** Comes once the page stands without an answer; with the first answer, where it asks for one after all. */
async function nothingAsked(): Promise<void> {
  await new Promise<void>((resolve) => {
    reference.subscribe((known) => known !== null && setTimeout(resolve, NOTHING_ASKED_MS));
  });
  if (hasAsked()) await firstAnswer;
}

/** The next moment at which the page has nothing to do. */
function quiet(): Promise<void> {
  return new Promise((resolve) => {
    // Not every browser tells such moments.
    if ("requestIdleCallback" in globalThis) requestIdleCallback(() => resolve(), { timeout: QUIET_MS });
    else setTimeout(resolve, QUIET_MS);
  });
}
