import { firstAnswer } from "../api/client.ts";
import { onDevice } from "../local/onDevice.ts";
import { keepPages } from "./pagesKept.ts";
import { watchServer } from "./serverWatch.ts";

/** What waits for a quiet moment waits at most so long, in milliseconds. */
const QUIET_MS = 2000;

/**
 * Brings the engine into this browser, and keeps the pages in it, once the first answer stands: so that neither slows the
 * first sight of the page.
 */
export async function beginOffline(): Promise<void> {
  await firstAnswer;
  await quiet();
  const engine = await onDevice.begin().catch(() => null);
  const registration = await keepPages();
  if (engine !== null) await watchServer(engine, () => void registration?.update().catch(() => undefined));
}

/** The next moment at which the page has nothing to do. */
function quiet(): Promise<void> {
  return new Promise((resolve) => {
    // Not every browser tells such moments.
    if ("requestIdleCallback" in globalThis) requestIdleCallback(() => resolve(), { timeout: QUIET_MS });
    else setTimeout(resolve, QUIET_MS);
  });
}
