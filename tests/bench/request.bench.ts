import { Hono } from "hono";
import * as z from "zod";
import { jsonBody } from "../../worker/api/jsonBody.ts";
import type { Bench } from "./bench.ts";

const Wheel = z.strictObject({ spokes: z.int().min(12).max(48), brake: z.enum(["rim", "disc", "drum"]) });
const app = new Hono()
  .post("/parsed", async (c) => c.json(await c.req.json()))
  .post("/validated", jsonBody(z.strictObject({ wheels: z.array(Wheel) })), (c) =>
    c.json(c.req.valid("json")),
  );

const wheels = Array.from({ length: 50 }, (_, at) => ({ spokes: 20 + (at % 20), brake: "rim" }));
const good = JSON.stringify({ wheels });
const bad = JSON.stringify({ wheels: wheels.map((wheel) => ({ ...wheel, spoke: 1 })) });

function send(path: string, body: string): Promise<Response> {
  return Promise.resolve(
    app.request(path, { method: "POST", body, headers: { "Content-Type": "application/json" } }),
  );
}

export default {
  title: "a request of 50 wheels (1.7 KB), through the app without a network",
  candidates: [
    { name: "parsed and echoed", run: () => send("/parsed", good) },
    { name: "validated and echoed", run: () => send("/validated", good) },
    { name: "refused with 50 faults", run: () => send("/validated", bad) },
  ],
} satisfies Bench;
