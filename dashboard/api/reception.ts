import { signal } from "@preact/signals";

/** Whether the server answered when it was last asked; at first what the browser says of the network. */
export const reachable = signal(globalThis.navigator?.onLine ?? true);
