import { useState } from "preact/hooks";
import { DRAFT_FOLD_FAILED, DRAFT_FOLD_HOLDS, DRAFT_FOLD_TITLE } from "../words/listingFold.ts";
import type { ListingDraft, ListingDraftProps } from "./ListingDraft.tsx";

/** The draft of an advert, folded; its script is fetched when it is first unfolded. */
export function ListingFold(props: ListingDraftProps) {
  const [Panel, setPanel] = useState<{ readonly Draft: typeof ListingDraft } | null>(null);
  const [failed, setFailed] = useState(false);
  const load = () => {
    setFailed(false);
    import("./ListingDraft.tsx").then(
      (loaded) => setPanel({ Draft: loaded.ListingDraft }),
      () => setFailed(true),
    );
  };
  return (
    <section class="panel" aria-labelledby="listing-title">
      <h2 id="listing-title">{DRAFT_FOLD_TITLE}</h2>
      <details onToggle={(event) => event.currentTarget.open && Panel === null && load()}>
        <summary>{DRAFT_FOLD_HOLDS}</summary>
        {Panel !== null && <Panel.Draft {...props} />}
        {Panel === null && (
          <p class="working" role="status">
            {failed ? DRAFT_FOLD_FAILED : ""}
          </p>
        )}
      </details>
    </section>
  );
}
