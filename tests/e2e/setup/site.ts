import { fileURLToPath } from "node:url";
import { createTestHarness } from "wrangler";

/** The whole service, dashboard and API, on a port of its own with an empty log. */
export interface Site {
  readonly url: URL;
  readonly close: () => Promise<void>;
}

export async function serveSite(): Promise<Site> {
  const configPath = fileURLToPath(new URL("../../../wrangler.toml", import.meta.url));
  const harness = createTestHarness({ workers: [{ configPath }] });
  const { url } = await harness.listen();
  return { url, close: () => harness.close() };
}
