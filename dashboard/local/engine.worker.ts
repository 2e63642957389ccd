import catalogueAddress from "virtual:catalogue";
import * as z from "zod";
import { version } from "../../package.json";
import type { Catalogue } from "../../worker/engine/decision/catalogue.ts";
import { localApi } from "./localApi.ts";
import type { FromEngine, Question } from "./question.ts";

// The entry of the engine's own thread. Zod would try whether it may compile code; the pages' policy forbids that, and says so aloud.
z.config({ jitless: true });

const api = start();
api.then(
  () => send({ kind: "ready" }),
  (error: unknown) => send({ kind: "failed", why: String(error) }),
);
addEventListener("message", async ({ data }: MessageEvent<Question>) => {
  try {
    const answer = await api;
    send({ kind: "reply", reply: await answer(data) });
  } catch (error) {
    // The app answers every failure of its own; what still comes here leaves the page without a reply.
    send({ kind: "failed", why: String(error) });
  }
});

async function start() {
  const response = await fetch(catalogueAddress);
  if (!response.ok) throw new Error(`the tables did not come: ${response.status}`);
  return localApi(version, (await response.json()) as Catalogue);
}

function send(message: FromEngine): void {
  postMessage(message);
}
