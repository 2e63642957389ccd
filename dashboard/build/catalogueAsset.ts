import type { Plugin } from "vite";
import { readCatalogue } from "../../worker/tables.ts";

const NAME = "virtual:catalogue";

/**
 * Writes the server's tables, read and checked at build time, into a file of their own, and gives its address as the
 * module `virtual:catalogue`. So the engine in the browser has the very tables of the server, as data rather than
 * script, and need not check them again.
 */
export function catalogueAsset(): Plugin {
  return {
    name: "catalogue-asset",
    resolveId: (id) => (id === NAME ? `\0${NAME}` : null),
    load(id) {
      if (id !== `\0${NAME}`) return null;
      const file = this.emitFile({
        type: "asset",
        name: "catalogue.json",
        source: JSON.stringify(readCatalogue()),
      });
      return `export default import.meta.ROLLUP_FILE_URL_${file};`;
    },
  };
}
