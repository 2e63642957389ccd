import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { openContext, test } from "./setup/browserTest.ts";

const PUBLIC = fileURLToPath(new URL("../../dashboard/public/", import.meta.url));
/** The pictures that some systems want in place of a drawing: `WRITE_ICONS=1` makes them anew. */
const ICONS = [
  { picture: "icon-192.png", drawing: "icon.svg", size: 192 },
  { picture: "icon-512.png", drawing: "icon.svg", size: 512 },
  { picture: "icon-maskable-512.png", drawing: "icon-maskable.svg", size: 512 },
  { picture: "icon-apple-180.png", drawing: "icon-maskable.svg", size: 180 },
] as const;
/** Two browsers draw an edge a little differently: mean difference of a colour channel, of 255. */
const SAME = 1.5;

const dataUrl = (file: string, type: string) =>
  `data:${type};base64,${readFileSync(PUBLIC + file).toString("base64")}`;

/** A drawing as a picture of so many pixels a side. */
function drawn(page: Page, drawing: string, size: number): Promise<string> {
  return page.evaluate(
    async ({ source, side }) => {
      const image = new Image(side, side);
      image.src = source;
      await image.decode();
      const canvas = Object.assign(document.createElement("canvas"), { width: side, height: side });
      canvas.getContext("2d")?.drawImage(image, 0, 0, side, side);
      return canvas.toDataURL("image/png");
    },
    { source: dataUrl(drawing, "image/svg+xml"), side: size },
  );
}

/** Width of the first, and how far the second is from it on average. */
function compared(page: Page, first: string, second: string): Promise<{ width: number; off: number }> {
  return page.evaluate(
    async (sources) => {
      const [one, other] = await Promise.all(
        sources.map(async (source) => {
          const image = new Image();
          image.src = source;
          await image.decode();
          const { naturalWidth: width, naturalHeight: height } = image;
          const ink = Object.assign(document.createElement("canvas"), { width, height }).getContext("2d")!;
          ink.drawImage(image, 0, 0);
          return { width, pixels: ink.getImageData(0, 0, width, height).data };
        }),
      );
      const apart = one!.pixels.reduce((sum, value, i) => sum + Math.abs(value - (other!.pixels[i] ?? 0)), 0);
      return { width: one!.width, off: apart / one!.pixels.length };
    },
    [first, second],
  );
}

describe("the pages as an app", () => {
  test("the icons are pictures of the drawings, as large as the manifest says", async ({ page, site }) => {
    await page.goto("/robots.txt");
    const manifest = await (await fetch(new URL("/manifest.webmanifest", site))).json();
    for (const { picture, drawing, size } of ICONS) {
      const now = await drawn(page, drawing, size);
      if (process.env.WRITE_ICONS) writeFileSync(PUBLIC + picture, Buffer.from(now.split(",")[1]!, "base64"));
      const { width, off } = await compared(page, dataUrl(picture, "image/png"), now);
      expect(width, picture).toBe(size);
      expect(off, picture).toBeLessThan(SAME);
      const named = (manifest.icons as { src: string; sizes: string }[]).find(
        ({ src }) => src === `/${picture}`,
      );
      if (named !== undefined) expect(named.sizes).toBe(`${size}x${size}`);
    }
  });

  test("the browser finds nothing against installing them", async ({ browser, site }) => {
    const { context } = await openContext(browser, site, {});
    const page = await context.newPage();
    await page.goto("/");
    await page.evaluate(async () => void (await navigator.serviceWorker.ready));
    const session = await context.newCDPSession(page);
    const { errors, data } = await session.send("Page.getAppManifest");
    expect(errors).toEqual([]);
    expect(JSON.parse(data ?? "{}")).toMatchObject({ name: "Spokeworth", display: "standalone" });
    const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
    // A window without a history, as a test's is, is never offered to install.
    expect(installabilityErrors.filter(({ errorId }) => errorId !== "in-incognito")).toEqual([]);
    await context.close();
  });

  test("what has a hash in its name is kept for good; the service worker and the manifest are asked for each time", async ({
    site,
  }) => {
    const caching = async (path: string) => {
      const response = await fetch(new URL(path, site));
      expect(response.status, path).toBe(200);
      return `${response.headers.get("Content-Type")}: ${response.headers.get("Cache-Control")}`;
    };
    const text = await (await fetch(site)).text();
    const script = /src="(\/assets\/[^"]+\.js)"/.exec(text)?.[1] ?? "";
    expect(await caching(script)).toMatch(/^text\/javascript.*: public, max-age=31536000, immutable$/);
    expect(await caching("/sw.js")).toMatch(/^text\/javascript.*: no-cache$/);
    expect(await caching("/manifest.webmanifest")).toBe("application/manifest+json: no-cache");
    const kept = await (await fetch(new URL("/sw.js", site))).text();
    const tables = /\/assets\/catalogue-[\w-]+\.json/.exec(kept)?.[0] ?? "";
    expect(await caching(tables)).toMatch(/^application\/json.*: public, max-age=31536000, immutable$/);
  });
});
