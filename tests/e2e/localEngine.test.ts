import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import type { Question, Reply } from "../../dashboard/local/question.ts";
import { SAME_EVERYWHERE, statusesOf } from "../api/questions.ts";
import { testOfFirstVisit as test } from "./setup/browserTest.ts";
import { headed } from "./setup/dashboard.ts";

/** Replies of the engine's thread, as built, in the page, one after the other, and of the server. */
async function replies(page: Page, questions: readonly Question[]) {
  await page.goto("/finds/plum-hybrid");
  const engine = page.workers()[0] ?? (await page.waitForEvent("worker"));
  const script = engine.url();
  return page.evaluate(
    async ({ asked, address }) => {
      const thread = new Worker(address, { type: "module" });
      const message = () =>
        new Promise<{ kind: string; reply: Reply }>((resolve) =>
          thread.addEventListener("message", ({ data }) => resolve(data), { once: true }),
        );
      const started = await message();
      if (started.kind !== "ready") throw new Error(JSON.stringify(started));
      const here: Reply[] = [];
      const server: Reply[] = [];
      for (const { method, path, body } of asked) {
        const replied = message();
        thread.postMessage({ method, path, body });
        here.push((await replied).reply);
        const headers = { "Content-Type": "application/json" };
        const response = await fetch(path, body === null ? { method } : { method, headers, body });
        server.push({ status: response.status, body: await response.text() });
      }
      return { here, server };
    },
    { asked: questions, address: script },
  );
}

describe("the engine as built, in a browser, answers as the API does over HTTP, to the last byte", () => {
  for (const { what, questions, due } of SAME_EVERYWHERE) {
    test(what, async ({ page }) => {
      const { here, server } = await replies(page, questions);
      expect(due(statusesOf(here)), JSON.stringify(statusesOf(here))).toBe(true);
      here.forEach((reply, i) => {
        expect(reply, JSON.stringify(questions[i]).slice(0, 400)).toEqual(server[i]);
      });
    });
  }
});

describe("what a page asks", () => {
  test("is about the finds that it shows: one on a find's own page, the others once they come in sight", async ({
    page,
  }) => {
    // The engine would answer some of it unseen.
    await page.route("**/assets/engine.worker-*", (route) => route.abort());
    const asked: string[] = [];
    page.on("request", (request) => {
      if (new URL(request.url()).pathname === "/v1/appraisals") asked.push(request.postData() ?? "");
    });
    await page.goto("/finds/plum-hybrid");
    await headed(page, /^Make the plum hybrid safe/);
    await page.getByRole("link", { name: "What to ask for it" }).click();
    await headed(page, /^Made safe it sells/);
    expect(asked).toHaveLength(1);
    await page.getByRole("link", { name: "Finds", exact: true }).first().click();
    await headed(page, /seven earns? more/);
    expect(new Set(asked).size).toBe(8);
    expect(asked).toHaveLength(8);
  });

  test("or nothing, and the engine begins all the same", async ({ page }) => {
    const engine = page.waitForEvent("worker");
    await page.goto("/sheets");
    await headed(page, /^Which bike/);
    expect((await engine).url()).toContain("/assets/engine.worker-");
  });
});
