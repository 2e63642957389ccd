import { Hono } from "hono";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { jsonBody } from "../../worker/api/jsonBody.ts";
import type { Problem } from "../../worker/api/problem.ts";

const Wheel = z.strictObject({
  spokes: z.int().min(12).max(48),
  brake: z.enum(["rim", "disc", "drum"]),
  note: z.string().max(5).optional(),
});
const Body = z.strictObject({
  wheel: Wheel,
  sizes: z.array(z.number()).max(3).optional(),
  seen: z
    .partialRecord(
      z.enum(["rim-sidewall", "hub-play"]),
      z.union([z.strictObject({ level: z.string() }), z.strictObject({ measured: z.number() })]),
    )
    .optional(),
});

const app = new Hono().post("/wheels", jsonBody(Body, 2000), (c) => c.json(c.req.valid("json")));
const good = { wheel: { spokes: 36, brake: "rim" } };

function send(
  body: BodyInit | null,
  headers: Record<string, string> = { "Content-Type": "application/json" },
) {
  return app.request("/wheels", { method: "POST", body, headers });
}

async function refused(answer: Response, status: number): Promise<Problem> {
  expect(answer.status).toBe(status);
  expect(answer.headers.get("Content-Type")).toBe("application/problem+json");
  const problem = await answer.json<Problem>();
  expect(problem).toMatchObject({ type: "about:blank", status });
  expect(problem.detail).not.toBe("");
  return problem;
}

async function errorsFor(body: unknown) {
  return (await refused(await send(JSON.stringify(body)), 422)).errors;
}

describe("a JSON body that is as the route asks", () => {
  test("reaches the handler", async () => {
    const answer = await send(JSON.stringify(good));
    expect([answer.status, await answer.json()]).toEqual([200, good]);
  });

  test.each(["application/json; charset=utf-8", "Application/JSON", 'application/json;charset="UTF-8"'])(
    "is taken as %s",
    async (type) => {
      expect((await send(JSON.stringify(good), { "Content-Type": type })).status).toBe(200);
    },
  );

  test("is taken up to the limit to the byte and no further", async () => {
    const json = JSON.stringify(good);
    expect((await send(json.padEnd(2000))).status).toBe(200);
    await refused(await send(json.padEnd(2001)), 413);
  });
});

describe("a body that cannot be read", () => {
  test.each([
    "text/plain",
    "application/x-www-form-urlencoded",
    "application/json; charset=latin1",
    "application/jsonp",
  ])("of type %s is refused with what to send instead", async (type) => {
    const problem = await refused(await send(JSON.stringify(good), { "Content-Type": type }), 415);
    expect(problem.detail).toContain("application/json");
  });

  test("without a type, or compressed, is refused", async () => {
    await refused(await app.request("/wheels", { method: "POST" }), 415);
    const zipped = { "Content-Type": "application/json", "Content-Encoding": "gzip" };
    expect((await refused(await send("x", zipped), 415)).detail).toContain("uncompressed");
  });

  test.each(["", "  ", "{", "{'wheel':1}", '{"wheel":NaN}', '{"a":1,}', "[".repeat(1500)])(
    "is not well-formed JSON: %s",
    async (text) => {
      await refused(await send(text), 400);
    },
  );

  test("that is not UTF-8 is refused", async () => {
    expect((await refused(await send(new Uint8Array([0x22, 0xff, 0x22])), 400)).detail).toContain("UTF-8");
  });

  test("of undeclared length is read no further than the limit", async () => {
    let pulled = 0;
    const endless = new ReadableStream<Uint8Array>({
      pull(controller) {
        pulled += 1;
        controller.enqueue(new Uint8Array(1024).fill(0x20));
      },
    });
    await refused(await send(endless), 413);
    expect(pulled).toBeLessThan(10);
  });
});

describe("well-formed JSON that is not as the route asks", () => {
  test("every unknown field is named by its pointer, with the fields known there", async () => {
    expect(await errorsFor({ wheel: { ...good.wheel, spoke: 36, "a/b~c": 1 }, whel: 1 })).toEqual([
      {
        pointer: "/wheel/spoke",
        message: expect.stringContaining("spoke is not"),
        allowed: ["spokes", "brake", "note"],
      },
      { pointer: "/wheel/a~1b~0c", message: expect.any(String), allowed: ["spokes", "brake", "note"] },
      { pointer: "/whel", message: expect.stringContaining("spelling"), allowed: ["wheel", "sizes", "seen"] },
    ]);
  });

  test("a missing field is named with what to give", async () => {
    expect(await errorsFor({ wheel: {} })).toEqual([
      { pointer: "/wheel/spokes", message: "spokes is missing: give a number" },
      {
        pointer: "/wheel/brake",
        message: 'brake is missing: give one of "rim", "disc", "drum"',
        allowed: ["rim", "disc", "drum"],
      },
    ]);
  });

  test.each([
    [{ wheel: { spokes: "36", brake: "rim" } }, "/wheel/spokes", "spokes must be a number, not text"],
    [{ wheel: { spokes: 36.5, brake: "rim" } }, "/wheel/spokes", "spokes must be a whole number, not 36.5"],
    [{ wheel: { spokes: 50, brake: "rim" } }, "/wheel/spokes", "spokes must be at most 48, not 50"],
    [{ wheel: { spokes: 2, brake: "rim" } }, "/wheel/spokes", "spokes must be at least 12, not 2"],
    [
      { ...good, wheel: { ...good.wheel, note: "too long" } },
      "/wheel/note",
      "note must have at most 5 characters",
    ],
    [{ ...good, sizes: [1, "2"] }, "/sizes/1", "sizes[1] must be a number, not text"],
    [{ ...good, sizes: [1, 2, 3, 4] }, "/sizes", "sizes must hold at most 3 entries"],
    [{ ...good, wheel: null }, "/wheel", "wheel must be an object, not null"],
    [[], "", "the value must be an object, not a list"],
    [null, "", "the value must be an object, not null"],
  ])("%j: the one fault is named with its remedy", async (body, pointer, message) => {
    expect(await errorsFor(body)).toEqual([{ pointer, message }]);
  });

  test("a value out of a list is answered with the list", async () => {
    expect(await errorsFor({ wheel: { spokes: 36, brake: "coaster" } })).toEqual([
      {
        pointer: "/wheel/brake",
        message: 'brake must be one of "rim", "disc", "drum", not "coaster"',
        allowed: ["rim", "disc", "drum"],
      },
    ]);
  });

  test("an unknown name in a record is answered with the names known", async () => {
    expect(await errorsFor({ ...good, seen: { "rim-wall": { level: "ok" } } })).toEqual([
      { pointer: "/seen/rim-wall", message: expect.any(String), allowed: ["rim-sidewall", "hub-play"] },
    ]);
  });

  test("of a choice of forms, the closest one says what is wrong", async () => {
    expect(await errorsFor({ ...good, seen: { "hub-play": { level: 3 } } })).toEqual([
      { pointer: "/seen/hub-play/level", message: "level must be text, not 3" },
    ]);
    expect(await errorsFor({ ...good, seen: { "hub-play": "loose" } })).toEqual([
      { pointer: "/seen/hub-play", message: expect.stringContaining("forms") },
    ]);
  });

  test("a number too large to hold is refused, not taken for infinity", async () => {
    const problem = await refused(await send('{"wheel":{"spokes":36,"brake":"rim"},"sizes":[1e999]}'), 422);
    expect(problem.errors).toEqual([
      { pointer: "/sizes/0", message: "sizes[0] must be a number, not a number too large to hold" },
    ]);
  });

  test("names that objects carry by nature are unknown fields like any other", async () => {
    const problem = await refused(
      await send('{"wheel":{"spokes":36,"brake":"rim"},"__proto__":{"a":1},"constructor":1}'),
      422,
    );
    expect(problem.errors?.map(({ pointer }) => pointer)).toEqual(["/__proto__", "/constructor"]);
  });
});
