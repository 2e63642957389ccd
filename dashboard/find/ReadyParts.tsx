import type { ComponentChildren } from "preact";
import type { Appraisal } from "../api/types.ts";
import { READY_PARTS, READY_TITLES, readyRows } from "../words/ready.ts";

interface ReadyPartsProps {
  readonly readiness: Pick<Appraisal["readiness"], "blocking" | "owed">;
  readonly isPaper: (check: string) => boolean;
  /** The line of a check that blocks. */
  readonly fault: (check: string) => ComponentChildren;
  /** The line of a look that is owed. */
  readonly look: (check: string) => ComponentChildren;
  /** How the looks owed are listed: as plain lines, or as rows with something to press. */
  readonly looksAs: "bullets" | "lookrows";
  /** More looks than this are folded; none are where it is left out. */
  readonly mostOpen?: number;
}

/** What stands before anyone rides it, and before it is sold: faults to cure and looks owed, apart. */
export function ReadyParts(props: ReadyPartsProps) {
  const { readiness, isPaper, fault, look, looksAs, mostOpen = Number.POSITIVE_INFINITY } = props;
  const rows = readyRows(readiness, isPaper);
  return (["ride", "sale"] as const).map((part) => {
    const { blocking, owed } = rows[part];
    if (blocking.length + owed.length === 0) return null;
    return (
      <div key={part}>
        <h3>{READY_TITLES[part]}</h3>
        <Lines title={READY_PARTS[part]} ids={blocking} line={fault} as="bullets" />
        <Lines title={READY_PARTS.owed} ids={owed} line={look} as={looksAs} folded={owed.length > mostOpen} />
      </div>
    );
  });
}

interface LinesProps {
  readonly title: string;
  readonly ids: readonly string[];
  readonly line: (check: string) => ComponentChildren;
  readonly as: string;
  readonly folded?: boolean;
}

function Lines({ title, ids, line, as, folded = false }: LinesProps) {
  if (ids.length === 0) return null;
  const list = (
    <ul class={as}>
      {ids.map((id) => (
        <li key={id}>{line(id)}</li>
      ))}
    </ul>
  );
  if (folded) {
    return (
      <details>
        <summary>
          {title} ({ids.length})
        </summary>
        {list}
      </details>
    );
  }
  return (
    <>
      <p class="small">
        <b>{title}</b>
      </p>
      {list}
    </>
  );
}
