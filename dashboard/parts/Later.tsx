import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";
import { NO_PAGE_NOT_COME } from "../words/noPage.ts";
import { Heading } from "./Heading.tsx";
import { Trouble } from "./Trouble.tsx";

export interface LaterProps {
  readonly title: string;
  /** Fetches the page; stays the same between renders. */
  readonly load: () => Promise<FunctionComponent>;
}

const fetched = new Map<LaterProps["load"], FunctionComponent>();

/** Fetches a page's script; from then on `Later` draws it at once. */
export async function fetchLater(load: LaterProps["load"]): Promise<FunctionComponent> {
  const Page = await load();
  fetched.set(load, Page);
  return Page;
}

/** A page whose script is fetched when it is first opened, so that the first page stays light. */
export function Later({ title, load }: LaterProps) {
  const [page, setPage] = useState<{ readonly Page: FunctionComponent } | "waiting" | "failed">(() => {
    const Page = fetched.get(load);
    return Page === undefined ? "waiting" : { Page };
  });
  useEffect(() => {
    if (page !== "waiting") return;
    fetchLater(load).then(
      (Page) => setPage({ Page }),
      () => setPage("failed"),
    );
  }, [load, page]);
  // No heading while waiting: the page's own then takes the focus after a move.
  if (page === "waiting") return <main class="page" id="main" aria-busy="true" />;
  if (page !== "failed") return <page.Page />;
  return (
    <main class="page" id="main">
      <Heading title={title}>{NO_PAGE_NOT_COME}</Heading>
      <Trouble fault={{ kind: "no-signal" }} again={() => setPage("waiting")} />
    </main>
  );
}
