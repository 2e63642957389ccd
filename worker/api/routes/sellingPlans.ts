import type * as z from "zod";
import { planSale } from "../../engine/selling/planSale.ts";
import { sellingPlanAnswer } from "../answers/sellingPlan.ts";
import { BODY_LIMIT_BYTES, jsonBody } from "../jsonBody.ts";
import type { SellingRequestSchema } from "../schemas/sellingRequest.ts";
import type { Service } from "../service.ts";
import { exampleRequest } from "./exampleRequest.ts";
import type { Route } from "./route.ts";

/** A request to start from: the tourer of the appraisal, put up as it stands, and an offer in the second week. Invented. */
export const exampleSale = {
  ...exampleRequest,
  state: "asFound",
  market: { storagePerWeek: 2 },
  offer: { amount: 60, week: 2 },
} satisfies z.input<SellingRequestSchema>;

/** `POST /v1/selling-plans`: what to ask, when to come down, what to accept. */
export function sellingPlans({ selling, book }: Service): Route {
  return {
    method: "post",
    path: "/v1/selling-plans",
    operationId: "sellingPlans",
    summary: "What to ask for a bicycle, when to come down and what to accept",
    description:
      "For a find in one of its states, or for a going rate alone: the asking prices week by week that make the expected takings " +
      "less storage as large as can be, the chance that it is sold by each week, the lowest offer to accept in it, what to answer an " +
      "offer that came, and whether a later month pays. What may not be sold is refused.",
    body: () => ({ schema: selling(), example: exampleSale, limitBytes: BODY_LIMIT_BYTES }),
    answer: sellingPlanAnswer,
    exampleAnswer: () => planSale(selling().parse(exampleSale), book()),
    tagged: false,
    mount: (app) => {
      app.post("/v1/selling-plans", jsonBody(selling), (c) => c.json(planSale(c.req.valid("json"), book())));
    },
  };
}
