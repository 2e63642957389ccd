import type { JSHandle, Page } from "playwright-core";
import { describe, expect } from "vitest";
import type { Question, Reply } from "../../dashboard/local/question.ts";
import { SAME_EVERYWHERE, statusesOf } from "../api/questions.ts";
import { test as base, openContext, testOfFirstVisit as test } from "./setup/browserTest.ts";
import { headed } from "./setup/dashboard.ts";

/** A visitor's page with a thread of the engine of its own, as built, that answers one question after the other. */
const testOfEngine = base.extend("asked", { scope: "file" }, async ({ browser, site }, { onCleanup }) => {
  const { context, faults } = await openContext(browser, site);
  onCleanup(async () => {
    await context.close();
    expect(faults).toEqual([]);
  });
  const page = await context.newPage();
  await page.goto("/finds/plum-hybrid");
  const engine = page.workers()[0] ?? (await page.waitForEvent("worker"));
  const thread = await page.evaluateHandle(async (address) => {
    const started = new Worker(address, { type: "module" });
    const { data } = await new Promise<MessageEvent>((resolve) =>
      started.addEventListener("message", resolve, { once: true }),
    );
    if (data.kind !== "ready") throw new Error(JSON.stringify(data));
    return started;
  }, engine.url());
  return { page, thread };
});

/** Replies of the engine's thread and of the server. */
function replies({ page, thread }: { page: Page; thread: JSHandle<Worker> }, questions: readonly Question[]) {
  return page.evaluate(
    async ({ asked, thread }) => {
      const here: Reply[] = [];
      const server: Reply[] = [];
      for (const { method, path, body } of asked) {
        const replied = new Promise<MessageEvent>((resolve) =>
          thread.addEventListener("message", resolve, { once: true }),
        );
        thread.postMessage({ method, path, body });
        here.push((await replied).data.reply);
        const headers = { "Content-Type": "application/json" };
        const response = await fetch(path, body === null ? { method } : { method, headers, body });
        server.push({ status: response.status, body: await response.text() });
      }
      return { here, server };
    },
    { asked: questions, thread },
  );
}

describe("the engine as built, in a browser, answers as the API does over HTTP, to the last byte", () => {
  for (const { what, questions, due } of SAME_EVERYWHERE) {
    testOfEngine(what, async ({ asked }) => {
      const { here, server } = await replies(asked, questions);
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
