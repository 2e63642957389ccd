import { createHash } from "node:crypto";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import preact from "@preact/preset-vite";
import { build, type Plugin, type Rollup } from "vite";
import type { FirstSight } from "../prerender/firstSights.tsx";

const ENTRY = fileURLToPath(new URL("../prerender/thread.ts", import.meta.url));
const CHOICE = fileURLToPath(new URL("../firstSight/choice.js", import.meta.url));
/** Before this stands, in a page's HTML, what is there before its script has come. */
const PLACE = '<div id="app">';
/** A style sheet is written into the page: nothing is seen before it has come. */
const STYLE = /<link rel="stylesheet" crossorigin href="([^"]+)">/g;
/** What the first sight stands without comes after it. */
const LATER = /<script type="module"|<link rel="(modulepreload|preload)"/g;
/** Where the host's settings take the hash of the script in the page. */
const HASH = "'sha256-choice'";

/**
 * Writes every page that stands without anything of the user's own as it is first seen, so that it is there with the
 * first bytes and the script only has to bring it to life. A small script in the page takes it away again, before
 * anything is shown, where it would not be what the user is to see.
 */
export function firstSights(): Plugin {
  let root = "";
  return {
    name: "first-sights",
    apply: "build",
    configResolved: (config) => {
      root = config.root;
    },
    writeBundle: {
      order: "post",
      sequential: true,
      async handler({ dir }, bundle) {
        if (dir === undefined) throw new Error("first sights are written beside pages in a folder");
        const shell = readFileSync(join(dir, "index.html"), "utf8");
        if (!shell.includes(PLACE)) throw new Error(`index.html must hold ${PLACE}`);
        const choice = readFileSync(CHOICE, "utf8").trim();
        for (const sight of await drawn(join(dirname(dir), "prerender"))) {
          const html = shell
            .replace("</head>", () => `${links(sight, bundle, shell, root)}  </head>`)
            .replaceAll(LATER, (tag) => `${tag} fetchpriority="low"`)
            .replaceAll(STYLE, (_, file) => `<style>${readFileSync(join(dir, file), "utf8").trim()}</style>`)
            .replace(PLACE, (place) => `${sightOf(sight, choice)}${place}`);
          const file = join(dir, sight.path === "/" ? "index.html" : `${sight.path.slice(1)}.html`);
          mkdirSync(dirname(file), { recursive: true });
          writeFileSync(file, html);
        }
        const headers = join(dir, "_headers");
        const hash = createHash("sha256").update(choice).digest("base64");
        writeFileSync(headers, withHash(readFileSync(headers, "utf8"), `'sha256-${hash}'`));
      },
    },
  };
}

/** The pages, drawn by a build of their own for this machine, in a thread of its own. */
async function drawn(folder: string): Promise<readonly FirstSight[]> {
  mkdirSync(folder, { recursive: true });
  const outDir = mkdtempSync(join(folder, "built-"));
  try {
    await build({
      configFile: false,
      logLevel: "warn",
      publicDir: false,
      plugins: [preact()],
      ssr: { noExternal: true },
      build: {
        ssr: ENTRY,
        outDir,
        target: "es2022",
        rollupOptions: { output: { entryFileNames: "pages.mjs" } },
      },
    });
    const [sights] = await once(new Worker(join(outDir, "pages.mjs")), "message");
    return sights;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** What is seen first, and the script that decides whether it is. */
function sightOf({ path, page, html }: FirstSight, choice: string): string {
  // Where a narrow and a wide screen differ in more than room, the sight is a phone's.
  const narrow = page === "compare" ? ' data-narrow="yes"' : "";
  return `<script data-path="${path}"${narrow}>${choice}</script><div id="first">${html}</div>`;
}

/** Style and script that the page's own script would only ask for once it runs. */
function links({ page }: FirstSight, bundle: Rollup.OutputBundle, shell: string, root: string): string {
  if (page === "finds") return "";
  const module = join(root, "pages", `${page[0]?.toUpperCase()}${page.slice(1)}Page.tsx`);
  const chunks = Object.values(bundle).filter((one) => one.type === "chunk");
  const own = chunks.find(({ facadeModuleId }) => facadeModuleId === module);
  if (own === undefined) throw new Error(`${page} has no script of its own`);
  const here = new Set([own.fileName]);
  for (const name of here) {
    const chunk = chunks.find(({ fileName }) => fileName === name);
    for (const next of chunk?.imports ?? []) here.add(next);
  }
  const css = new Set<string>();
  for (const chunk of chunks)
    if (here.has(chunk.fileName)) for (const file of chunk.viteMetadata?.importedCss ?? []) css.add(file);
  return [
    ...[...css].map((file) => ({ rel: "stylesheet", file })),
    ...[...here].map((file) => ({ rel: "modulepreload", file })),
  ]
    .filter(({ file }) => !shell.includes(`"/${file}"`))
    .map(({ rel, file }) => `  <link rel="${rel}" crossorigin href="/${file}">\n  `)
    .join("");
}

function withHash(headers: string, hash: string): string {
  if (!headers.includes(HASH))
    throw new Error(`_headers must leave a place for the script in the page: ${HASH}`);
  return headers.replace(HASH, hash);
}
