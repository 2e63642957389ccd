import { DEMO_FINDS } from "../finds/demo.ts";
import { LONGEST_NAME, type OwnFind } from "../finds/own.ts";
import type { ReadFind } from "./findsFile.ts";
import { fingerprint } from "./fingerprint.ts";

/** What becomes of one find of a file: it is new, it is here already, or it stands beside one of the same id that differs. */
export interface TakenFind {
  readonly find: OwnFind;
  readonly as: "new" | "same" | "beside";
  readonly lost: readonly string[];
}

/**
 * What to do with the finds of a file. Nothing that is kept is overwritten: a find whose id is taken by one that differs
 * gets another name and an id that follows from its contents, so that the same file read again adds nothing.
 * @param kept the finds in this browser
 */
export function takenFinds(read: readonly ReadFind[], kept: readonly OwnFind[]): readonly TakenFind[] {
  const known = [...kept];
  return read.map(({ find, lost }) => {
    const taken = place(find, known);
    if (taken.as !== "same") known.push(taken.find);
    return { ...taken, lost };
  });
}

function place(read: OwnFind, known: readonly OwnFind[]): Omit<TakenFind, "lost"> {
  const find = withFreeId(read);
  const there = same(find, known);
  if (there !== undefined) return { find: there, as: "same" };
  if (!known.some(({ id }) => id === find.id)) return { find, as: "new" };
  const beside = renamed(find);
  const before = same(beside, known);
  return before === undefined ? { find: beside, as: "beside" } : { find: before, as: "same" };
}

/** An invented find's id stays its own: of two finds with one id, each would show the other's answer. */
function withFreeId(find: OwnFind): OwnFind {
  return DEMO_FINDS.some(({ id }) => id === find.id) ? { ...find, id: `${find.id}-${contents(find)}` } : find;
}

/** The find that says just the same, whatever its id. */
function same(find: OwnFind, known: readonly OwnFind[]): OwnFind | undefined {
  const mark = contents(find);
  return known.find((one) => contents(one) === mark);
}

function contents({ id: _, ...find }: OwnFind): string {
  return fingerprint(find);
}

function renamed(find: OwnFind): OwnFind {
  const end = " (from a file)";
  const name = `${find.name.trim().slice(0, LONGEST_NAME - end.length)}${end}`;
  return { ...find, id: `${find.id}-${contents(find)}`, name };
}
