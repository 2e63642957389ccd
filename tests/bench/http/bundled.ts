import { fileURLToPath } from "node:url";
import { build, type Rollup } from "vite";

/** A module beside this one with everything it imports, as one text of ES modules for the Worker's runtime. */
export async function bundled(entry: string): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: "warn",
    ssr: { noExternal: true, target: "webworker" },
    build: {
      ssr: fileURLToPath(new URL(entry, import.meta.url)),
      write: false,
      minify: true,
      rollupOptions: { output: { codeSplitting: false } },
    },
  });
  const [output] = [built].flat() as Rollup.RollupOutput[];
  const [chunk] = output?.output ?? [];
  if (chunk?.type !== "chunk") throw new Error(`nothing was built from ${entry}`);
  return chunk.code;
}
