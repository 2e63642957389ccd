import { signal } from "@preact/signals";
import { fetchReference } from "../api/client.ts";
import type { Fault } from "../api/fault.ts";
import type { Reference } from "../api/types.ts";

/** The catalogue, once it has come. */
export const reference = signal<Reference | null>(null);
export const referenceFault = signal<Fault | null>(null);

/** Fetches the catalogue; again after a fault. */
export async function loadReference(): Promise<void> {
  referenceFault.value = null;
  const outcome = await fetchReference();
  if ("ok" in outcome) reference.value = outcome.ok;
  else referenceFault.value = outcome.fault;
}
