import { describe, expect } from "vitest";
import { test } from "./setup/browserTest.ts";

describe("the site", () => {
  test("the first page has one heading", async ({ page }) => {
    await page.goto("/");
    await page.getByRole("heading", { level: 1 }).waitFor();
    expect(await page.getByRole("heading", { level: 1 }).count()).toBe(1);
  });

  test("an address inside the dashboard opens the dashboard, one of the API the API", async ({
    page,
    site,
  }) => {
    await page.goto("/finds/any");
    await page.getByRole("heading", { level: 1 }).waitFor();
    expect(await (await fetch(new URL("/health", site))).json()).toMatchObject({ status: "ok" });
    const missing = await fetch(new URL("/v1/none", site), { headers: { "Sec-Fetch-Mode": "navigate" } });
    expect(missing.status).toBe(404);
    expect(missing.headers.get("Content-Type")).toBe("application/problem+json");
  });

  test("the pages carry the headers that keep foreign scripts out, and let crawlers in", async ({ site }) => {
    const page = await fetch(site);
    expect(page.headers.get("Content-Security-Policy")).toContain("default-src 'none'");
    expect(page.headers.get("X-Content-Type-Options")).toBe("nosniff");
    const robots = await fetch(new URL("/robots.txt", site));
    expect(await robots.text()).toMatch(/^User-agent: \*/);
  });
});
