import type * as z from "zod";
import type { AppraisalRequest } from "../../engine/decision/appraisalRequest.ts";
import type { Book } from "../../engine/decision/book.ts";
import { BODY_LIMIT_BYTES, jsonBody } from "../jsonBody.ts";
import type { Service } from "../service.ts";
import { exampleRequest } from "./exampleRequest.ts";
import type { Route } from "./route.ts";

/** A route that takes one find and answers what the engine makes of it. */
export interface FindRoute<Answer> {
  readonly path: string;
  readonly operationId: string;
  readonly summary: string;
  readonly description: string;
  readonly answer: z.ZodType<Answer>;
  readonly compute: (request: AppraisalRequest, book: Book) => Answer;
}

/** All of them take the same body, so that a find that was described once can be asked anything. */
export function findRoute<Answer>(
  { compute, ...route }: FindRoute<Answer>,
  { book, request }: Service,
): Route {
  return {
    ...route,
    method: "post",
    body: () => ({ schema: request(), example: exampleRequest, limitBytes: BODY_LIMIT_BYTES }),
    exampleAnswer: () => compute(request().parse(exampleRequest), book()),
    tagged: false,
    mount: (app) => {
      app.post(route.path, jsonBody(request), (c) => c.json(compute(c.req.valid("json"), book())));
    },
  };
}
