import { chromium } from "playwright-core";
const { createTestHarness } = await import("wrangler");
const h = createTestHarness({ workers: [{ configPath: "./wrangler.toml" }] }); const { url } = await h.listen();
const b = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox","--disable-gpu"] });
for (const width of [390,1280]) for (const p of ["/","/finds/plum-hybrid","/finds/white-carbon-racer","/finds/plum-hybrid/listing","/describe","/compare","/together","/prices"]) {
  const c = await b.newContext({ serviceWorkers:"block", viewport:{width,height:844} }); const page = await c.newPage();
  await page.addInitScript(() => { window.__s=[]; new PerformanceObserver((l)=>{ for (const e of l.getEntries()) window.__s.push({v:e.value, recent:e.hadRecentInput, t:Math.round(e.startTime), n:e.sources.slice(0,3).map(s=>{const x=s.node?.nodeType===3?s.node.parentElement:s.node; return (x?.tagName??"")+"."+(x?.className?.baseVal??x?.className??"")+" "+(x?.textContent??"").slice(0,30)+" "+s.previousRect.top+"->"+s.currentRect.top})}); }).observe({type:"layout-shift",buffered:true}); });
  await page.goto(new URL(p,url).href); await page.waitForTimeout(3500);
  const s = await page.evaluate(()=>window.__s);
  console.log(width,p,"CLS",s.reduce((a,x)=>a+x.v,0).toFixed(4)); for(const x of s) console.log("    ",x.v.toFixed(4),x.t,x.n.join(" | "));
  await c.close();
}
await b.close(); await h.close(); process.exit(0);
