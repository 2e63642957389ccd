import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";
import type { Site } from "./site.ts";

/** A site at an address of its own, from which everything is passed on to another, until it is closed and nothing answers. */
export async function servePassedOn(site: URL): Promise<Site> {
  const server = createServer((asked, answer) => {
    const { method, headers } = asked;
    const passed = request(new URL(asked.url ?? "/", site), { method, headers }, (answered) => {
      answer.writeHead(answered.statusCode ?? 502, answered.headers);
      answered.pipe(answer);
    });
    passed.on("error", () => answer.destroy());
    asked.pipe(passed);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    url: new URL(`http://127.0.0.1:${(server.address() as AddressInfo).port}`),
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
