import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

/** The long proofs of `npm run proof`: too slow for every run, so apart from `npm test`. */
export default defineConfig({
  root: fileURLToPath(new URL("../..", import.meta.url)),
  test: {
    name: "proof",
    include: ["tests/proof/**/*.test.ts", "tests/engine/properties/**/*.test.ts"],
    // The laws of every run, on more finds.
    env: { SPOKEWORTH_TIMES_DRAWN: "5" },
    testTimeout: 3_600_000,
    reporters: ["default", "./tests/reporter/countLine.ts"],
  },
});
