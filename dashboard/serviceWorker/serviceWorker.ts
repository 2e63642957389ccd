import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from "workbox-precaching";
import { NavigationRoute, registerRoute } from "workbox-routing";
import { type PrecachedFile, TAKE_OVER } from "./precached.ts";

declare const self: ServiceWorkerGlobalScope;
/** Written in by the build. */
declare const PRECACHED_FILES: PrecachedFile[];

/** What the server answers itself: it is never kept here. The engine in the browser answers it without a signal. */
const THE_SERVERS = [/^\/v1\//, /^\/health$/, /^\/openapi\.json$/, /^\/docs(\/|$)/];

// Every file of the pages, so that each works without a signal, those that were never opened too.
precacheAndRoute(PRECACHED_FILES, { cleanURLs: false, directoryIndex: "" });
registerRoute(new NavigationRoute(createHandlerBoundToURL("/"), { denylist: THE_SERVERS }));
cleanupOutdatedCaches();

// The first version serves the page that brought it; a newer one waits until the user wants it, so that no page changes under their hands.
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("message", ({ data }) => {
  if (data === TAKE_OVER) void self.skipWaiting();
});
