import { reachable } from "../api/reception.ts";
import type { Engine } from "../local/engine.ts";
import { newer } from "../state/newer.ts";

/** An answer that takes longer is no signal, in milliseconds. */
const PATIENCE_MS = 8000;
/** Between two questions while nothing answers, in milliseconds. */
const RETRY_MS = 15_000;
/** Between two questions while the server answers, at least, in milliseconds. */
const REST_MS = 60_000;

/** Version of the service and of its tables, as `GET /health` says them. */
interface Versions {
  readonly version: string;
  readonly dataVersion: string;
}

/**
 * Asks the server now and then whether it is there, now that the engine in this browser gives the answers, and whether
 * it works from the same code and tables. Where not, the newer version is offered.
 * @param look fetches the newer version of the pages, where there is one
 */
export async function watchServer(engine: Engine, look: () => void): Promise<void> {
  const own = JSON.parse((await engine.ask({ method: "GET", path: "/health", body: null })).body) as Versions;
  let asked = Number.NEGATIVE_INFINITY;
  let retry: ReturnType<typeof setTimeout> | undefined;

  async function check(): Promise<void> {
    clearTimeout(retry);
    asked = performance.now();
    try {
      const response = await fetch("/health", {
        cache: "no-store",
        signal: AbortSignal.timeout(PATIENCE_MS),
      });
      const theirs = (await response.json()) as Versions;
      reachable.value = true;
      if (theirs.dataVersion === own.dataVersion && theirs.version === own.version) return;
      look();
      newer.value ??= { what: "server", take: () => location.reload() };
    } catch {
      reachable.value = false;
      retry = setTimeout(() => document.visibilityState === "visible" && void check(), RETRY_MS);
    }
  }

  addEventListener("online", () => void check());
  addEventListener("offline", () => {
    reachable.value = false;
  });
  document.addEventListener("visibilitychange", () => {
    const rested = performance.now() - asked > REST_MS || !reachable.value;
    if (document.visibilityState === "visible" && rested) void check();
  });
  await check();
}
