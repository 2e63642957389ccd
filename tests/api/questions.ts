import fc from "fast-check";
import { DEMO_FINDS } from "../../dashboard/finds/demo.ts";
import { withGoal } from "../../dashboard/finds/find.ts";
import type { Question } from "../../dashboard/local/question.ts";
import { exampleComparison } from "../../worker/api/routes/exampleComparison.ts";
import { exampleRequest } from "../../worker/api/routes/exampleRequest.ts";
import { exampleSale } from "../../worker/api/routes/sellingPlans.ts";
import { CASES, requestOf } from "../engine/workedCases/workedCase.ts";
import { anyRequest } from "./anyRequest.ts";
import { spoilt } from "./spoilt.ts";

/** Questions that wherever the API runs must be answered the same, and how often each status is due. */
export interface SameEverywhere {
  readonly what: string;
  readonly questions: readonly Question[];
  readonly due: (count: Readonly<Record<number, number>>) => boolean;
}

const FIND_ROUTES = ["/v1/appraisals", "/v1/findings", "/v1/valuations"];
const post = (path: string, body: unknown): Question => ({
  method: "POST",
  path,
  body: JSON.stringify(body),
});
const get = (path: string): Question => ({ method: "GET", path, body: null });
const onEveryRoute = (body: unknown) => FIND_ROUTES.map((path) => post(path, body));
const { find } = exampleRequest;
const demoFinds = DEMO_FINDS.map(({ id, body }) => ({ ...body, find: { ...body.find, id } }));
const drawn = [
  ...fc.sample(anyRequest, { seed: 20_251, numRuns: 60 }),
  ...fc.sample(spoilt(anyRequest), { seed: 20_252, numRuns: 60 }),
];

export const SAME_EVERYWHERE: readonly SameEverywhere[] = [
  {
    what: "every demo find, the stopped one among them, on every route",
    questions: DEMO_FINDS.flatMap(({ body }) => onEveryRoute(withGoal(body, 12))),
    due: (count) => count[200] === 3 * DEMO_FINDS.length,
  },
  {
    what: "every worked case, on every route",
    questions: CASES.flatMap((one) => {
      const { observations, workshop } = requestOf(one);
      return onEveryRoute({ find: one.find, observations, workshop });
    }),
    due: (count) => count[200] === 3 * CASES.length,
  },
  {
    what: "comparisons, plans of a sale, the catalogue, the versions",
    questions: [
      post("/v1/comparisons", exampleComparison),
      post("/v1/comparisons", { finds: demoFinds, budgets: { hours: 8, cash: 150, slots: 2 } }),
      post("/v1/selling-plans", exampleSale),
      post("/v1/selling-plans", { value: { p10: 90, p50: 130, p90: 180 }, market: { month: 12 } }),
      get("/v1/reference"),
      get("/health"),
    ],
    due: (count) => count[200] === 6,
  },
  {
    what: "what is refused, with every pointer",
    questions: [
      post("/v1/appraisals", {}),
      post("/v1/appraisals", { find: { ...find, era: "1880s", categry: "hybrid" } }),
      post("/v1/appraisals", { find, observations: { chain: { measured: { length24: 12 } }, chian: {} } }),
      post("/v1/valuations", { find: { ...find, purchase: { price: -1 } } }),
      post("/v1/findings", { find, observations: { headset: { level: "wobbly" } } }),
      post("/v1/appraisals", { find, comparables: [{ price: "dear", kind: "paid" }] }),
      post("/v1/comparisons", { finds: [], budgets: { hours: -2 } }),
      get("/v1/appraisals"),
      get("/v1/none"),
    ],
    due: (count) => count[422] === 7 && count[405] === 1 && count[404] === 1,
  },
  {
    what: "requests drawn at random, sound and spoilt",
    questions: drawn.map((body) => post("/v1/appraisals", body)),
    due: (count) => (count[200] ?? 0) >= 20 && (count[422] ?? 0) >= 20 && !(500 in count),
  },
];

/** How often each status came. */
export function statusesOf(replies: readonly { readonly status: number }[]): Record<number, number> {
  const count: Record<number, number> = {};
  for (const { status } of replies) count[status] = (count[status] ?? 0) + 1;
  return count;
}
