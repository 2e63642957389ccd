import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Plugin } from "vite";
import type { PrecachedFile } from "../serviceWorker/precached.ts";

const ENTRY = fileURLToPath(new URL("../serviceWorker/serviceWorker.ts", import.meta.url));
/** Not part of the pages: settings of the host, and words to crawlers. Of the HTML one file serves every address. */
const NOT_KEPT = ["_headers", "robots.txt", "sw.js"];

/** Builds the service worker after the pages, into `sw.js`, with the list of every file it keeps. */
export function serviceWorker(): Plugin {
  return {
    name: "service-worker",
    apply: "build",
    writeBundle: {
      order: "post",
      sequential: true,
      async handler({ dir }) {
        if (dir === undefined)
          throw new Error("the service worker is built beside pages that are written to a folder");
        await build({
          configFile: false,
          logLevel: "warn",
          publicDir: false,
          define: { PRECACHED_FILES: JSON.stringify(filesIn(dir)), "process.env.NODE_ENV": '"production"' },
          build: {
            outDir: dir,
            emptyOutDir: false,
            target: "es2022",
            lib: { entry: ENTRY, formats: ["iife"], name: "serviceWorker", fileName: () => "sw.js" },
          },
        });
      },
    },
  };
}

/** Every file of a build by its address, with a hash of its content where the name does not hold one already. */
function filesIn(folder: string): PrecachedFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .filter((path) => !NOT_KEPT.includes(path) && (path === "index.html" || !path.endsWith(".html")))
    .sort()
    .map((path) => ({
      // The host answers /index.html with a redirect to /.
      url: path === "index.html" ? "/" : `/${path}`,
      revision: path.startsWith("assets/") ? null : hash(join(folder, path)),
    }));
}

function hash(file: string): string {
  return createHash("sha256").update(readFileSync(file)).digest("hex").slice(0, 16);
}
