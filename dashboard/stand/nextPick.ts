import { isAtHand, type OpenLook } from "./looks.ts";

/** What the user has passed by. */
export interface PassedBy {
  /** Checks that could not be told. */
  readonly unsure: readonly string[];
  /** Checks put off: they come again once nothing else is left. */
  readonly later: readonly string[];
  /** Whether to go on although nothing more pays. */
  readonly goingOn: boolean;
}

/** What can be looked at now, and which of it is next. */
export interface NextPick {
  /** Null where nothing is left that pays (or at all). */
  readonly next: OpenLook | null;
  /** Looks at hand still open, whether they pay or not. */
  readonly open: number;
  /** Those of them that are owed. */
  readonly owed: number;
}

/**
 * The look to make now: the first at hand that pays, alone or with the others of its place. Where nothing pays there is
 * none, until the user goes on: then what is owed comes first. What was put off comes last.
 * @param looks open ones, best first
 * @param together checks that pay together
 */
export function nextPick(
  looks: readonly OpenLook[],
  together: ReadonlySet<string>,
  { unsure, later, goingOn }: PassedBy,
): NextPick {
  const open = looks.filter(({ check }) => isAtHand(check) && !unsure.includes(check.id));
  const fresh = open.filter(({ check }) => !later.includes(check.id));
  const inTurn = [...fresh, ...open.filter((look) => !fresh.includes(look))];
  const owed = inTurn.filter(({ check }) => check.ifNotChecked === "block");
  const alone = inTurn.find(({ worth }) => worth !== null && worth.netGain > 0);
  const pays = alone ?? inTurn.find(({ check }) => together.has(check.id));
  const next = pays ?? (goingOn ? (owed[0] ?? inTurn[0]) : undefined) ?? null;
  return { next, open: open.length, owed: owed.length };
}
