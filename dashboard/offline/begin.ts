import { firstAnswer, hasAsked } from "../api/client.ts";
import { onDevice } from "../local/onDevice.ts";
import { reference } from "../state/reference.ts";
import { keepPages } from "./pagesKept.ts";
import { watchServer } from "./serverWatch.ts";

/** What waits for a quiet moment waits at most so long, in milliseconds. */
const QUIET_MS = 2000;

/** A page that has its catalogue and asks nothing in this time is about no find, in milliseconds. */
const NOTHING_ASKED_MS = 2000;

/**
 * Brings the engine into this browser, and keeps the pages in it, once the first answer stands, or the page where it asks
 * nothing: so that neither slows the first sight of the page.
 */
export async function beginOffline(): Promise<void> {
  await Promise.race([firstAnswer, nothingAsked()]);
  await quiet();
  const engine = await onDevice.begin().catch(() => null);
  const registration = await keepPages();
  if (engine !== null) await watchServer(engine, () => void registration?.update().catch(() => undefined));
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
