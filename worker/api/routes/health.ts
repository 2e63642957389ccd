import * as z from "zod";
import type { Service } from "../service.ts";
import type { Route } from "./route.ts";

const healthAnswer = z.strictObject({
  status: z.literal("ok"),
  version: z.string().min(1).describe("Version of the service"),
  dataVersion: z.string().min(1).describe("Hash of the tables the answers come from"),
});

/** `GET /health`: that the service answers, and from which code and tables. */
export function health({ version, catalogue }: Service): Route {
  const answer = () => ({ status: "ok" as const, version, dataVersion: catalogue().version });
  return {
    method: "get",
    path: "/health",
    operationId: "health",
    summary: "Whether the service answers",
    description: "Says from which version of the service and of the tables answers come.",
    body: null,
    answer: healthAnswer,
    exampleAnswer: answer,
    tagged: false,
    mount: (app) => {
      app.get("/health", (c) => c.json(answer()));
    },
  };
}
