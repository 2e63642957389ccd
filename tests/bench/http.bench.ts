import { readFileSync } from "node:fs";
import { exampleRequest } from "../../worker/api/routes/exampleRequest.ts";
import type { Bench } from "./bench.ts";
import { startServer } from "./http/server.ts";

const WARM_UP = 300;
const README = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
/** The README's worked example: 36 of 49 checks made. */
const looked = JSON.stringify(JSON.parse(/```json\n([\s\S]*?)```/.exec(README)![1]!));
/** Eight checks made: most of the bike stays unknown, and is reckoned with. */
const half = JSON.stringify(exampleRequest);
const server = await startServer("./worker.ts");
for (let sent = 0; sent < WARM_UP; sent += 1) {
  await server.post("/echo", looked);
  await server.post("/v1/appraisals", looked);
}

export default {
  title: "one find over HTTP, in the Worker's runtime; every run is one request, so the medians are p50",
  candidates: [
    { name: "the same body read, checked and echoed", run: () => server.post("/echo", looked) },
    { name: "POST /v1/findings", run: () => server.post("/v1/findings", looked) },
    { name: "POST /v1/valuations", run: () => server.post("/v1/valuations", looked) },
    { name: "POST /v1/appraisals", run: () => server.post("/v1/appraisals", looked) },
    { name: "POST /v1/appraisals, hardly looked over", run: () => server.post("/v1/appraisals", half) },
  ],
  effort: { rounds: 500, roundMilliseconds: 0 },
  mostTimesTheFirst: { "POST /v1/appraisals": 2 },
  close: server.close,
} satisfies Bench;
