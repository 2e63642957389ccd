import type { FunctionComponent } from "preact";
import { useEffect, useState } from "preact/hooks";
import { NO_PAGE_NOT_COME } from "../words/noPage.ts";
import { Heading } from "./Heading.tsx";
import { Trouble } from "./Trouble.tsx";

/**
 * A page whose script is fetched when it is first opened, so that the first page stays light.
 * @param load must stay the same between renders
 */
export function Later({ title, load }: { title: string; load: () => Promise<FunctionComponent> }) {
  const [page, setPage] = useState<{ readonly Page: FunctionComponent } | "waiting" | "failed">("waiting");
  useEffect(() => {
    if (page !== "waiting") return;
    load().then(
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
