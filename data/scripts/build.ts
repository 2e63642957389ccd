import { readFileSync, writeFileSync } from "node:fs";
import { historyFiles } from "./historyFiles.ts";
import { valueFiles } from "./valueFiles.ts";

/**
 * npm run data: draws the invented sales, fits the value model, and reports how the hidden history fits its rules. With --check it writes nothing and fails where a
 * file differs from what would be written.
 */
const check = process.argv.includes("--check");
for (const [name, text] of [...valueFiles(), ...historyFiles()]) {
  const path = new URL(`../${name}`, import.meta.url);
  if (!check) writeFileSync(path, text);
  else if (readFileSync(path, "utf8") !== text) {
    process.stderr.write(`data/${name} is not what the scripts make: run npm run data\n`);
    process.exitCode = 1;
  }
}
