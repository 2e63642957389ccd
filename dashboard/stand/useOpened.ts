import { useEffect, useState } from "preact/hooks";
import { rowOf } from "./CheckRow.tsx";
import type { Progress } from "./looks.ts";

/** Which groups and rows are unfolded, and what is looked for among them. */
export interface Opened {
  readonly rows: ReadonlySet<string>;
  readonly groups: ReadonlySet<string>;
  readonly typed: string;
  openRow(check: string, open: boolean): void;
  openGroup(group: string, open: boolean): void;
  type(text: string): void;
  /** Unfolds a check with its group, brings it into sight and gives it the focus. */
  show(check: string): void;
}

/** The check that the address names: "#check-headset". */
function named(): string | null {
  const prefix = `#${rowOf("")}`;
  return location.hash.startsWith(prefix) ? location.hash.slice(prefix.length) : null;
}

export function useOpened(progress: readonly Progress[]): Opened {
  const [rows, setRows] = useState<ReadonlySet<string>>(new Set());
  const [groups, setGroups] = useState<ReadonlySet<string>>(new Set());
  const [typed, setTyped] = useState("");
  const [sought, setSought] = useState<string | null>(named);

  useEffect(() => {
    if (sought === null) return;
    const group = progress.find(({ checks }) => checks.some(({ id }) => id === sought))?.group;
    if (group === undefined) return;
    setTyped("");
    setGroups((open) => holding(open, group, true));
    setRows((open) => holding(open, sought, true));
    const row = document.getElementById(rowOf(sought));
    // The row is there once its group has unfolded: this runs again then.
    if (row === null) return;
    row.scrollIntoView({ block: "start" });
    row.querySelector("summary")?.focus({ preventScroll: true });
    setSought(null);
  });

  return {
    rows,
    groups,
    typed,
    openRow: (check, open) => setRows((before) => holding(before, check, open)),
    openGroup: (group, open) => setGroups((before) => holding(before, group, open)),
    type: setTyped,
    show: setSought,
  };
}

function holding(set: ReadonlySet<string>, item: string, held: boolean): ReadonlySet<string> {
  if (set.has(item) === held) return set;
  const next = new Set(set);
  if (held) next.add(item);
  else next.delete(item);
  return next;
}
