import type { Operation, Remedy, Step } from "./operation.ts";
import type { Part, Tool } from "./part.ts";

/** The tables that this room reads. */
export interface ServiceTables {
  readonly steps: readonly Step[];
  readonly operations: readonly Operation[];
  readonly remedies: readonly Remedy[];
  readonly parts: readonly Part[];
  readonly tools: readonly Tool[];
}
