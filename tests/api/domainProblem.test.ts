import { describe, expect, test, vi } from "vitest";
import { domainProblem } from "../../worker/api/domainProblem.ts";
import { DomainError, type DomainErrorCode } from "../../worker/engine/domainError.ts";
import { problemIn } from "./problemIn.ts";

function refusal(code: string, pointer?: string): Response {
  return domainProblem(new DomainError(code as DomainErrorCode, "length", 301, "at least 301.8 mm", pointer));
}

describe("a refusal of the engine", () => {
  test.each(["out-of-domain", "unknown-id", "impossible-measurement"])(
    "for %s is the request's fault, at its pointer, in the engine's words",
    async (code) => {
      const { errors } = await problemIn(refusal(code, "/observations/chain"), 422);
      expect(errors).toEqual([
        { pointer: "/observations/chain", message: "length requires at least 301.8 mm, got 301" },
      ]);
    },
  );

  test("without a pointer is about the whole body", async () => {
    expect((await problemIn(refusal("out-of-domain"), 422)).errors).toMatchObject([{ pointer: "" }]);
  });

  test("for tables that contradict each other is our fault, and names nothing of the request", async () => {
    const log = vi.spyOn(console, "error").mockImplementation(() => {});
    expect((await problemIn(refusal("inconsistent-table"), 500)).errors).toBeUndefined();
    expect(log).toHaveBeenCalledOnce();
    log.mockRestore();
  });

  test("with a code that nobody wrote a sentence for is still no failure of ours", async () => {
    const log = vi.spyOn(console, "error").mockImplementation(() => {});
    expect((await problemIn(refusal("code-of-tomorrow", "/find"), 422)).errors).toHaveLength(1);
    log.mockRestore();
  });
});
