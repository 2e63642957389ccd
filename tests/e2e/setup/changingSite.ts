import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname } from "node:path";
import { fileURLToPath } from "node:url";
import { version } from "../../../package.json" with { type: "json" };
import { createApp } from "../../../worker/api/app.ts";
import { readCatalogue } from "../../../worker/tables.ts";

const BUILD = fileURLToPath(new URL("../../../dist/dashboard", import.meta.url));
const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".webmanifest": "application/manifest+json",
};

/** The built pages and the API on a port of their own, whose version can be changed while a page is open. */
export interface ChangingSite {
  readonly url: URL;
  /** From now on the service worker has another text, as after a deployment of other pages. */
  deployPages(mark: string): void;
  /** From now on the API answers from tables of another version. */
  deployData(dataVersion: string): void;
  close(): Promise<void>;
}

export async function serveChangingSite(): Promise<ChangingSite> {
  const catalogue = readCatalogue();
  let app = createApp({ version, readCatalogue });
  let mark = "";
  const server = createServer(async (request, response) => {
    const path = new URL(request.url ?? "/", "http://site.test").pathname;
    if (path.startsWith("/v1/") || path === "/health") {
      const chunks: Buffer[] = [];
      for await (const chunk of request) chunks.push(chunk as Buffer);
      const method = request.method ?? "GET";
      const headers = { "Content-Type": "application/json" };
      const body = method === "POST" ? { body: Buffer.concat(chunks).toString() } : {};
      const answer = await app.request(path, { method, headers, ...body });
      response.writeHead(answer.status, { "Content-Type": answer.headers.get("Content-Type") ?? "" });
      response.end(await answer.text());
      return;
    }
    const file = extname(path) === "" ? "/index.html" : path;
    const content = await readFile(BUILD + file).catch(() => null);
    response.writeHead(content === null ? 404 : 200, {
      "Content-Type": TYPES[extname(file)] ?? "text/plain",
      "Cache-Control": "no-cache",
    });
    response.end(file === "/sw.js" && content !== null ? `${content}\n// ${mark}` : content);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    url: new URL(`http://127.0.0.1:${(server.address() as AddressInfo).port}`),
    deployPages(next) {
      mark = next;
    },
    deployData(dataVersion) {
      app = createApp({ version, readCatalogue: () => ({ ...catalogue, version: dataVersion }) });
    },
    close: () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
