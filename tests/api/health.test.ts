import { describe, expect, test } from "vitest";
import { version as packageVersion } from "../../package.json";
import { ask, post } from "./ask.ts";

describe("the service as deployed", () => {
  test("says that it answers, and from which version and tables", async () => {
    const answer = await ask("/health");
    expect(answer.status).toBe(200);
    expect(await answer.json()).toEqual({
      status: "ok",
      version: packageVersion,
      dataVersion: expect.stringMatching(/./),
    });
  });

  test("answers an unknown route with problem details", async () => {
    const answer = await ask("/v1/nowhere");
    expect(answer.status).toBe(404);
    expect(answer.headers.get("Content-Type")).toBe("application/problem+json");
    expect(await answer.json()).toEqual({
      type: "about:blank",
      title: "Not Found",
      status: 404,
      detail: expect.stringContaining("/v1/nowhere"),
    });
  });

  test("answers a route asked by another method with the methods it knows (RFC 9110, section 15.5.6)", async () => {
    const answer = await post("/health", {});
    expect(answer.status).toBe(405);
    expect(answer.headers.get("Allow")).toBe("GET, HEAD");
    expect(await answer.json()).toMatchObject({ title: "Method Not Allowed", status: 405 });
  });
});
