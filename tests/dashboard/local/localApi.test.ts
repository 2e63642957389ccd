import { describe, expect, test } from "vitest";
import { localApi } from "../../../dashboard/local/localApi.ts";
import type { Question, Reply } from "../../../dashboard/local/question.ts";
import { createApp } from "../../../worker/api/app.ts";
import { readCatalogue } from "../../../worker/tables.ts";
import { SAME_EVERYWHERE, statusesOf } from "../../api/questions.ts";

/** As the build writes the tables down and the browser reads them. */
const here = localApi("1.2.3", JSON.parse(JSON.stringify(readCatalogue())));
const app = createApp({ version: "1.2.3", readCatalogue });

async function server({ method, path, body }: Question): Promise<Reply> {
  const headers = { "Content-Type": "application/json" };
  const response = await app.request(path, body === null ? { method } : { method, headers, body });
  return { status: response.status, body: await response.text() };
}

describe("the API in the browser answers as the server's, to the last byte", () => {
  test.each(SAME_EVERYWHERE)("$what", async ({ questions, due }) => {
    const replies: Reply[] = [];
    for (const question of questions) {
      const reply = await here(question);
      expect(reply, JSON.stringify(question).slice(0, 400)).toEqual(await server(question));
      replies.push(reply);
    }
    expect(due(statusesOf(replies)), JSON.stringify(statusesOf(replies))).toBe(true);
  });

  test("where a request has no stream, its bytes are read all the same", async () => {
    const [question] = SAME_EVERYWHERE[0]!.questions;
    const body = Object.getOwnPropertyDescriptor(Request.prototype, "body")!;
    Object.defineProperty(Request.prototype, "body", { value: undefined, configurable: true });
    try {
      expect((await here(question!)).status).toBe(200);
    } finally {
      Object.defineProperty(Request.prototype, "body", body);
    }
  });

  test("the document of the routes is left to the server", async () => {
    expect((await here({ method: "GET", path: "/openapi.json", body: null })).status).toBe(404);
  });
});
