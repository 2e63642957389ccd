import type { Check } from "../api/types.ts";
import type { Bike } from "../describe/bike.ts";
import { madeOf } from "../words/checkTexts.ts";
import { allChecks, foundWords, STAND_FIND } from "../words/standTexts.ts";
import { CheckRow } from "./CheckRow.tsx";
import type { Progress } from "./looks.ts";
import { found } from "./looks.ts";
import type { Bench } from "./useBench.ts";
import type { Opened } from "./useOpened.ts";

interface GroupsProps {
  readonly groups: readonly Progress[];
  readonly bench: Bench;
  readonly bike: Bike;
  readonly rows: Opened;
}

/** Every check that applies, by the catalogue's groups, each with how far it was looked at; or those that a word finds. */
export function Groups(props: GroupsProps) {
  const { groups, rows } = props;
  const { typed } = rows;
  const all = groups.flatMap(({ checks }) => checks);
  const hits = found(all, typed);
  return (
    <section class="panel" aria-labelledby="groups-title">
      <h2 id="groups-title">{allChecks(all.length)}</h2>
      <div class="field">
        <label for="find-check">{STAND_FIND}</label>
        <input
          id="find-check"
          type="search"
          autocomplete="off"
          value={typed}
          onInput={(event) => rows.type(event.currentTarget.value)}
        />
      </div>
      {typed.trim() === "" ? (
        groups.map(({ group, label, checks, made }) => (
          <details
            key={group}
            class="group"
            open={rows.groups.has(group)}
            onToggle={(event) =>
              event.currentTarget.open !== rows.groups.has(group) &&
              rows.openGroup(group, event.currentTarget.open)
            }
          >
            <summary>
              <span class="foldname">{label}</span>
              <span class="small">{madeOf(made, checks.length)}</span>
              <span class="share" aria-hidden="true">
                <span style={{ width: `${(100 * made) / checks.length}%` }} />
              </span>
            </summary>
            {rows.groups.has(group) && <Rows {...props} checks={checks} />}
          </details>
        ))
      ) : (
        <>
          <p class="small" role="status">
            {foundWords(hits.length)}
          </p>
          <Rows {...props} checks={hits} />
        </>
      )}
    </section>
  );
}

function Rows({ checks, bench, bike, rows }: GroupsProps & { checks: readonly Check[] }) {
  return (
    <div class="checklist">
      {checks.map((check) => (
        <CheckRow
          key={check.id}
          check={check}
          bench={bench}
          bike={bike}
          isOpen={rows.rows.has(check.id)}
          onOpen={(open) => rows.openRow(check.id, open)}
        />
      ))}
    </div>
  );
}
