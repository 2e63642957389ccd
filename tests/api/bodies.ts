import { exampleRequest } from "../../worker/api/routes/exampleRequest.ts";
import type { AppraisalBody } from "../../worker/api/types.ts";

/** The least that a route about one find takes. */
export const LEAST = {
  find: { category: "hybrid", era: "2000s", frameMaterial: "aluminium", componentTier: "mid" },
} as const satisfies AppraisalBody;

/** A request that works. */
export const GOOD: AppraisalBody = exampleRequest;

/** The least request with one observation. */
export function seen(check: string, observation: unknown) {
  return { ...LEAST, observations: { [check]: observation } };
}

/** The least request with other words in the description. */
export function described(words: Record<string, unknown>) {
  return { find: { ...LEAST.find, ...words } };
}

/** The routes about one find. */
export const FIND_ROUTES = ["/v1/findings", "/v1/valuations", "/v1/appraisals"] as const;
