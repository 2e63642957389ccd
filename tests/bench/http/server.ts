import { Miniflare } from "miniflare";
import { bundled } from "./bundled.ts";

const HEADERS = { "Content-Type": "application/json" };

/** A Worker that answers over HTTP on this machine. */
export interface Server {
  /** Sends a JSON text and reads the whole answer. */
  readonly post: (path: string, json: string) => Promise<string>;
  readonly close: () => Promise<void>;
}

/** Starts the Worker of a module in the runtime, without the proxy of a development server. */
export async function startServer(entry: string): Promise<Server> {
  const contents = await bundled(entry);
  const manifest = {
    mainModule: "worker.mjs",
    modules: { "worker.mjs": { type: "esm" as const, contents } },
  };
  const miniflare = new Miniflare({
    logRequests: false,
    telemetry: { enabled: false },
    workers: [{ config: { name: "bench", compatibilityDate: "2026-11-01", manifest } }],
  });
  const home = await miniflare.ready;
  const post = async (path: string, json: string) => {
    const answer = await fetch(new URL(path, home), { method: "POST", headers: HEADERS, body: json });
    const text = await answer.text();
    if (answer.status !== 200) throw new Error(`${path} answered ${answer.status}: ${text}`);
    return text;
  };
  return { post, close: () => miniflare.dispose() };
}
