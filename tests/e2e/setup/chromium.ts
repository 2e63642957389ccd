import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

/** A browser that starts on this machine: its program, and what its environment needs beyond ours. */
export interface Browser {
  executablePath: string;
  environment: Record<string, string>;
}

const UNPACKED = fileURLToPath(new URL("../../../node_modules/.cache/chromium", import.meta.url));
const NAMES = ["google-chrome", "google-chrome-stable", "chromium", "chromium-browser", "chrome"];
const OUTSIDE_THE_PATH = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];

/** What to do where no browser starts. */
export const BROWSER_MISSING =
  "The end-to-end tests need Chrome or Chromium and found none that starts. Install either so that `google-chrome` " +
  "or `chromium` is on the PATH, or set CHROME_PATH to the program. The copy among the packages runs on Linux x64 only.";

/** A Chrome or Chromium installed on this machine, else the one among the packages, unpacked once; null where neither starts. */
export function findChromium(): Browser | null {
  return installedChromium() ?? packagedChromium() ?? null;
}

function installedChromium(): Browser | undefined {
  const onPath = (process.env.PATH ?? "")
    .split(":")
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  const candidates = [
    process.env.CHROME_PATH ?? "",
    ...onPath,
    ...OUTSIDE_THE_PATH,
    chromium.executablePath(),
  ];
  return candidates
    .filter((path) => path !== "" && existsSync(path))
    .map((executablePath) => ({ executablePath, environment: {} }))
    .find(starts);
}

function packagedChromium(): Browser | undefined {
  if (process.platform !== "linux" || process.arch !== "x64") return undefined;
  if (!existsSync(UNPACKED)) unpack();
  const executablePath = join(UNPACKED, "chromium");
  const fonts = existsSync("/etc/fonts/fonts.conf") ? {} : { FONTCONFIG_PATH: join(UNPACKED, "fonts") };
  // The libraries among the packages serve only where the system has none of its own.
  const libraries = { LD_LIBRARY_PATH: join(UNPACKED, "al2023", "lib") };
  return [fonts, { ...fonts, ...libraries }]
    .map((environment) => ({ executablePath, environment }))
    .find(starts);
}

/** Unpacks aside and moves into place in one step, so that a run beside this one never sees half a browser. */
function unpack(): void {
  mkdirSync(dirname(UNPACKED), { recursive: true });
  const aside = mkdtempSync(join(dirname(UNPACKED), "chromium-"));
  const program =
    'const { default: packaged } = await import("@sparticuz/chromium"); await packaged.executablePath();';
  execFileSync(process.execPath, ["--input-type=module", "--eval", program], {
    cwd: dirname(fileURLToPath(import.meta.url)),
    // The package unpacks into the temporary folder, and its libraries only where this variable names that runtime.
    env: { ...process.env, TMPDIR: aside, AWS_EXECUTION_ENV: "AWS_Lambda_nodejs24.x" },
    stdio: "inherit",
  });
  try {
    renameSync(aside, UNPACKED);
  } catch (error) {
    rmSync(aside, { recursive: true });
    if (!existsSync(UNPACKED)) throw error;
  }
}

/** Whether a program names itself Chrome or Chromium: ending well is not enough, an empty file does that too. */
function starts({ executablePath, environment }: Browser): boolean {
  try {
    const version = execFileSync(executablePath, ["--version", "--no-sandbox"], {
      env: { ...process.env, ...environment },
      stdio: ["ignore", "pipe", "ignore"],
      encoding: "utf8",
      timeout: 20_000,
    });
    return /chrom\w*\s.*\d+\.\d+/i.test(version);
  } catch {
    return false;
  }
}
