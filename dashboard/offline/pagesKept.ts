import { TAKE_OVER } from "../serviceWorker/precached.ts";
import { newer } from "../state/newer.ts";

/**
 * Keeps every file of the pages in this browser by a service worker, so that they open without a signal. A newer version
 * is fetched beside the one in use and waits until the user takes it; the page is then loaded anew, never on its own.
 * @returns null where this browser keeps nothing: no service workers, or not in this window
 */
export async function keepPages(): Promise<ServiceWorkerRegistration | null> {
  const workers = navigator.serviceWorker;
  if (workers === undefined) return null;
  let inUse = workers.controller;
  let taking = false;
  workers.addEventListener("controllerchange", () => {
    const before = inUse;
    inUse = workers.controller;
    // The first version serves the page that brought it.
    if (before === null) return;
    if (taking) location.reload();
    else newer.value = { what: "pages", take: () => location.reload() };
  });
  const offer = (worker: ServiceWorker | null) => {
    if (worker === null || workers.controller === null) return;
    const take = () => {
      taking = true;
      worker.postMessage(TAKE_OVER);
    };
    newer.value = { what: "pages", take };
  };
  try {
    const registration = await workers.register("/sw.js");
    offer(registration.waiting);
    registration.addEventListener("updatefound", () => {
      const incoming = registration.installing;
      incoming?.addEventListener("statechange", () => {
        if (incoming.state === "installed") offer(incoming);
      });
    });
    return registration;
  } catch {
    return null;
  }
}
