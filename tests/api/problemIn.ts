import { expect } from "vitest";
import { problemAnswer } from "../../worker/api/answers/problem.ts";
import { PROBLEM_MEDIA_TYPE, type Problem } from "../../worker/api/problem.ts";

/** RFC 6901: empty, or "/" before each step, with "~" only as "~0" and "~1". */
const JSON_POINTER = /^(\/([^/~]|~[01])*)*$/;

/** The problem details of an answer that refuses: of the status asked for, closed, each field at fault with its pointer. */
export async function problemIn(answer: Response, status: number): Promise<Problem> {
  const text = await answer.text();
  expect(answer.status, text).toBe(status);
  expect(answer.headers.get("Content-Type")).toBe(PROBLEM_MEDIA_TYPE);
  const problem = problemAnswer.parse(JSON.parse(text));
  expect(problem.status).toBe(status);
  expect(problem.detail).not.toBe("");
  for (const { pointer, message } of problem.errors ?? []) {
    expect(pointer).toMatch(JSON_POINTER);
    expect(message).not.toBe("");
  }
  return problem;
}
