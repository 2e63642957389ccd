import type { Appraisal } from "../api/types.ts";
import { Term } from "../parts/Term.tsx";
import { standAt } from "../state/route.ts";
import { OWED, OWED_MEANS } from "../words/findPanels.ts";
import { FIND_NOT_CERTIFIED } from "../words/findTexts.ts";
import { readinessTitle } from "../words/titles.ts";
import type { Names } from "./names.ts";
import { ReadyParts } from "./ReadyParts.tsx";

interface ReadinessProps {
  readonly appraisal: Appraisal;
  readonly names: Names;
  /** Id of the find: each check leads to its card on the stand. Null where it is not in this browser. */
  readonly find: string | null;
}

/** More looks owed than this are folded. */
const MOST_OPEN = 6;

/** What still stands between the bike and the road, and between it and a sale. */
export function ReadinessPanel({ appraisal, names, find }: ReadinessProps) {
  const { readiness } = appraisal;
  const line = (check: string) =>
    find === null ? names.check(check) : <a href={standAt(find, check)}>{names.check(check)}</a>;
  return (
    <section class="panel" aria-labelledby="ready-title">
      <h2 id="ready-title">{readinessTitle(appraisal, names.isPaper)}</h2>
      <ReadyParts
        readiness={readiness}
        isPaper={names.isPaper}
        fault={line}
        look={line}
        looksAs="bullets"
        mostOpen={MOST_OPEN}
      />
      {readiness.owed.length > 0 && (
        <p class="small">
          <Term of="owed">{OWED}</Term>
          {OWED_MEANS}
        </p>
      )}
      {readiness.ready && <p class="small">{FIND_NOT_CERTIFIED}</p>}
    </section>
  );
}
