import type { BrowserContext, CDPSession, Page } from "playwright-core";

/** What a visitor's browser is set to before a test sets anything. */
const VIEWPORT = { width: 1280, height: 720 };
/** Who wants nothing to glide sees the same, and two cores do not draw it fifteen times on its way. */
const MEDIA = { media: null, colorScheme: "light", reducedMotion: "reduce" } as const;
/** A file of the same site: nothing runs there, and what the site stores can be reached. */
export const QUIET = "/robots.txt";
/** What a test does to a page that cannot be taken back, and so all that it does with the browser's own tools. */
const LASTING = ["addInitScript", "exposeFunction", "exposeBinding", "route", "setExtraHTTPHeaders"] as const;

interface Tab {
  readonly page: Page;
  readonly session: CDPSession;
  changedForGood: boolean;
}

/**
 * A page that serves one test after the other, to each as if it were new: nothing is stored, listened to or set, and no
 * way leads back. One that was new would fetch, read and compile every script again. Where a test changed it for good
 * the next one has another.
 */
export class SharedPage {
  private readonly context: BrowserContext;
  private readonly origin: string;
  private readonly newPage: () => Promise<Page>;
  private readonly devTools: BrowserContext["newCDPSession"];
  private tab: Tab | undefined;

  constructor(context: BrowserContext, { origin }: URL, newPage: () => Promise<Page>) {
    this.context = context;
    this.devTools = context.newCDPSession.bind(context);
    this.origin = origin;
    this.newPage = newPage;
  }

  async take(): Promise<Page> {
    this.tab ??= await this.open();
    await this.makeNew(this.tab);
    return this.tab.page;
  }

  /** After a test: what it opened is closed, and nothing of its page runs on. A page that cannot be left is not kept. */
  async putBack(): Promise<void> {
    const { tab } = this;
    this.tab = undefined;
    const stays = tab !== undefined && !tab.changedForGood && !tab.page.isClosed();
    for (const page of this.context.pages()) if (!stays || page !== tab.page) await page.close();
    if (!stays) return;
    tab.page.removeAllListeners();
    await tab.page.goto(QUIET);
    this.tab = tab;
  }

  private async open(): Promise<Tab> {
    const page = await this.newPage();
    const session = await this.devTools(page);
    const tab: Tab = { page, session, changedForGood: false };
    const onChange = () => {
      tab.changedForGood = true;
    };
    for (const name of LASTING)
      Object.assign(page, { [name]: told(page[name].bind(page) as Step, onChange) });
    Object.assign(this.context, { newCDPSession: told(this.devTools as Step, onChange) });
    await page.goto(QUIET);
    return tab;
  }

  private async makeNew({ page, session }: Tab): Promise<void> {
    await page.evaluate(() => sessionStorage.clear());
    await session.send("Storage.clearDataForOrigin", { origin: this.origin, storageTypes: "all" });
    await session.send("Page.resetNavigationHistory");
    await page.mouse.move(-1, -1);
    await page.emulateMedia(MEDIA);
    await page.setViewportSize(VIEWPORT);
  }
}

type Step = (...given: unknown[]) => unknown;

/** The same step, which tells that it was taken. */
function told(step: Step, tell: () => void): Step {
  return (...given) => {
    tell();
    return step(...given);
  };
}
