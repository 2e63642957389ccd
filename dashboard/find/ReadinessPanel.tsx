import type { Appraisal } from "../api/types.ts";
import { Term } from "../parts/Term.tsx";
import { standAt } from "../state/route.ts";
import { OWED, OWED_MEANS } from "../words/findPanels.ts";
import { FIND_NOT_CERTIFIED } from "../words/findTexts.ts";
import { READY_PARTS, READY_TITLES, readyRows } from "../words/ready.ts";
import { readinessTitle } from "../words/titles.ts";
import type { Names } from "./names.ts";

interface ReadinessProps {
  readonly appraisal: Appraisal;
  readonly names: Names;
  /** Id of the find: each check leads to its card on the stand. Null where it is not in this browser. */
  readonly find: string | null;
}

/** What still stands between the bike and the road, and between it and a sale. */
export function ReadinessPanel(props: ReadinessProps) {
  const { appraisal, names } = props;
  const { ride, sale } = readyRows(appraisal.readiness, names.isPaper);
  const owes = appraisal.readiness.owed.length > 0;
  return (
    <section class="panel" aria-labelledby="ready-title">
      <h2 id="ready-title">{readinessTitle(appraisal, names.isPaper)}</h2>
      {(["ride", "sale"] as const).map((part) => {
        const { blocking, owed } = part === "ride" ? ride : sale;
        if (blocking.length + owed.length === 0) return null;
        return (
          <div key={part}>
            <h3>{READY_TITLES[part]}</h3>
            <NameList {...props} title={READY_PARTS[part]} ids={blocking} />
            <NameList {...props} title={READY_PARTS.owed} ids={owed} folded={owed.length > MOST_OPEN} />
          </div>
        );
      })}
      {owes && (
        <p class="small">
          <Term of="owed">{OWED}</Term>
          {OWED_MEANS}
        </p>
      )}
      {appraisal.readiness.ready && <p class="small">{FIND_NOT_CERTIFIED}</p>}
    </section>
  );
}

/** More names than this are folded. */
const MOST_OPEN = 6;

function NameList(props: ReadinessProps & { title: string; ids: readonly string[]; folded?: boolean }) {
  const { title, ids, names, find, folded } = props;
  if (ids.length === 0) return null;
  const list = (
    <ul class="bullets">
      {ids.map((id) => (
        <li key={id}>
          {find === null ? names.check(id) : <a href={standAt(find, id)}>{names.check(id)}</a>}
        </li>
      ))}
    </ul>
  );
  if (folded !== true) {
    return (
      <>
        <p class="small">
          <b>{title}</b>
        </p>
        {list}
      </>
    );
  }
  return (
    <details>
      <summary>
        {title} ({ids.length})
      </summary>
      {list}
    </details>
  );
}
