import { createServer } from "node:net";
import { fileURLToPath } from "node:url";
import lighthouse from "lighthouse";
import { chromium, type Page } from "playwright-core";
import { build } from "vite";
import { BROWSER_MISSING, findChromium } from "../e2e/setup/chromium.ts";
import { serveSite } from "../e2e/setup/site.ts";
import type { FloorBench } from "./bench.ts";

const PAGES = [
  "/",
  "/finds/plum-hybrid",
  "/finds/white-carbon-racer",
  "/finds/plum-hybrid/listing",
  "/finds/plum-hybrid/stand",
  "/selling/plum-hybrid",
  "/describe",
  "/spot",
  "/sheets",
  "/compare",
  "/together",
  "/prices",
];
const CATEGORIES = ["performance", "accessibility", "best-practices"] as const;
const FLOOR = 100;
/** A machine that is busy with something else makes a page slower, never faster: the best of so many visits counts. */
const VISITS = 3;
/** From the click on a level to the answer on the screen, worked out in the browser, in milliseconds. */
const MOST_MS = 100;
const CLICKS = 20;

/** Scores of a visit, of 100, and what took points. */
interface Visit {
  readonly scores: readonly number[];
  readonly lost: readonly string[];
}

async function visit(address: string, port: number): Promise<Visit> {
  const result = await lighthouse(address, { port, logLevel: "error", onlyCategories: [...CATEGORIES] });
  if (result === undefined) throw new Error(`Lighthouse measured nothing at ${address}`);
  const { categories, audits } = result.lhr;
  const refs = CATEGORIES.flatMap((name) => categories[name]?.auditRefs ?? []);
  const lost = refs
    .filter(({ weight, id }) => weight > 0 && (audits[id]?.score ?? 1) < 1)
    .map(({ id }) => `${id} ${audits[id]?.displayValue ?? audits[id]?.score}`);
  return { scores: CATEGORIES.map((name) => Math.round((categories[name]?.score ?? 0) * 100)), lost };
}

/** Milliseconds from each of some clicks on a level to the paint of its answer. */
async function clickToPaint(page: Page, site: URL): Promise<number[]> {
  await page.goto(new URL("/describe", site).href);
  for (const label of ["Road racing", "1980s", "Steel", "Top"])
    await page.getByRole("radio", { name: label, exact: true }).first().check();
  const check = page.locator("details.check").filter({ hasText: "Signs of a front-end collision" });
  await check.locator("summary").click();
  const levels = [/^Plain signs/, /^Not looked at/].map((name) => check.getByRole("radio", { name }));
  while ((await page.locator(".workedout", { hasText: "Worked out on this" }).count()) === 0) {
    for (const level of levels) await level.check();
    await page.waitForTimeout(200);
  }
  const taken: number[] = [];
  for (let click = 0; click < CLICKS; click += 1) {
    const painted = page.evaluate(
      () =>
        new Promise<number>((resolve, reject) => {
          setTimeout(() => reject(new Error("no answer was painted in ten seconds")), 10_000);
          let clicked = 0;
          addEventListener("click", ({ timeStamp }) => (clicked ||= timeStamp), {
            capture: true,
            once: true,
          });
          const heading = document.querySelector("h1")!;
          new MutationObserver((_, observer) => {
            observer.disconnect();
            // The task after the next frame: that frame is painted.
            requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - clicked)));
          }).observe(heading, { childList: true, characterData: true, subtree: true });
        }),
    );
    await levels[click % 2]!.check();
    taken.push(await painted);
  }
  return taken.sort((a, b) => a - b);
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const address = server.address();
      const port = typeof address === "object" && address !== null ? address.port : 0;
      server.close(() => resolve(port));
    });
  });
}

export default {
  title: `every page as built, in Lighthouse's phone on a slow network (best of ${VISITS} visits), and a click to its painted answer`,
  async run(print) {
    const found = findChromium();
    if (found === null) throw new Error(BROWSER_MISSING);
    await build({
      configFile: fileURLToPath(new URL("../../dashboard/vite.config.ts", import.meta.url)),
      logLevel: "warn",
    });
    const site = await serveSite();
    const port = await freePort();
    const browser = await chromium.launch({
      executablePath: found.executablePath,
      args: ["--no-sandbox", "--disable-gpu", `--remote-debugging-port=${port}`],
      env: { ...process.env, ...found.environment },
    });
    let kept = true;
    try {
      const page = await browser.newPage();
      const taken = await clickToPaint(page, site.url);
      await page.close();
      const median = taken[Math.floor(taken.length / 2)] ?? Number.NaN;
      const quick = median < MOST_MS;
      kept &&= quick;
      print(
        `a click to its painted answer  median ${median.toFixed(0)} ms, slowest of ${CLICKS} ${taken.at(-1)?.toFixed(0)} ms${quick ? "" : `: not under ${MOST_MS} ms`}`,
      );
      print(`${"".padEnd(30)} ${CATEGORIES.join(", ")}`);
      for (const path of PAGES) {
        let best: Visit = { scores: CATEGORIES.map(() => 0), lost: [] };
        for (let n = 0; n < VISITS && best.scores.some((score) => score < FLOOR); n += 1) {
          const next = await visit(new URL(path, site.url).href, port);
          if (sum(next.scores) > sum(best.scores)) best = next;
        }
        const holds = best.scores.every((score) => score >= FLOOR);
        kept &&= holds;
        print(
          `${path.padEnd(30)} ${best.scores.join(", ")}${holds ? "" : `: under ${FLOOR}; ${best.lost.join("; ")}`}`,
        );
      }
    } finally {
      await browser.close();
      await site.close();
    }
    return kept;
  },
} satisfies FloorBench;

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
