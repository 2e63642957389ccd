import type { Appraisal } from "../api/types.ts";
import type { Find } from "./find.ts";

/** A find with its answer, where one has come. */
export interface Answered {
  readonly find: Find;
  readonly appraisal: Appraisal | null;
}
