import { fileURLToPath } from "node:url";
import { createTestHarness, unstable_readConfig } from "wrangler";

/** The whole service, dashboard and API, on a port of its own with an empty log. */
export interface Site {
  readonly url: URL;
  readonly close: () => Promise<void>;
}

const configPath = fileURLToPath(new URL("../../../wrangler.toml", import.meta.url));
const remembering = fileURLToPath(new URL("rememberingService.ts", import.meta.url));

/** Serves it just as deployed. */
export function serveSite(): Promise<Site> {
  return serve({ configPath });
}

/** Serves it with the same settings and files, but so that no question is worked out twice. */
export function serveRememberingSite(): Promise<Site> {
  const { name, compatibility_date, assets } = unstable_readConfig({ config: configPath });
  return serve({ config: { name, main: remembering, compatibility_date, assets } });
}

type Served = NonNullable<Parameters<typeof createTestHarness>[0]>["workers"][number];

async function serve(worker: Served): Promise<Site> {
  const harness = createTestHarness({ workers: [worker] });
  const { url } = await harness.listen();
  return { url, close: () => harness.close() };
}
