import { type ReadonlySignal, signal } from "@preact/signals";
import { type Answers, isComplete, NO_ANSWERS } from "../answers/answers.ts";
import { bodyOf } from "../answers/body.ts";
import { isRecord, parsedAnswers } from "../answers/parsed.ts";
import type { Check } from "../api/types.ts";
import type { Shelf } from "../state/shelf.ts";
import type { Find } from "./find.ts";

/** A find the user described. It stays in this browser. */
export interface OwnFind {
  readonly id: string;
  readonly name: string;
  readonly answers: Answers;
  /** Id of the find it was copied from; of a copy of a copy, of the first of them. */
  readonly copyOf?: string;
}

/** The user's own finds, kept on a shelf. */
export interface OwnFinds {
  readonly all: ReadonlySignal<readonly OwnFind[]>;
  /** What went wrong with keeping them, to be shown; null where nothing did. */
  readonly trouble: ReadonlySignal<"unreadable" | "not-kept" | null>;
  get(id: string): OwnFind | undefined;
  put(find: OwnFind): void;
  /** Puts several at once, each as `put` does. */
  putAll(finds: readonly OwnFind[]): void;
  remove(id: string): void;
}

/** Stands for the id of the bicycle that is none of the finds. No find has it. */
export const ALONE = "alone";
const VERSION = 1;
/** The longest name that the form takes, in letters. */
export const LONGEST_NAME = 60;

/** Opens the shelf. What cannot be read is left out, and said so; it is overwritten by the next change. */
export function openOwnFinds(place: Shelf): OwnFinds {
  const kept = place.read();
  const found = kept === "nothing" ? [] : kept === "unreadable" ? null : findsIn(kept.value);
  const all = signal<readonly OwnFind[]>(found ?? []);
  const trouble = signal<"unreadable" | "not-kept" | null>(found === null ? "unreadable" : null);

  function set(finds: readonly OwnFind[]): void {
    all.value = finds;
    trouble.value = place.write({ version: VERSION, finds }) ? null : "not-kept";
  }

  return {
    all,
    trouble,
    get: (id) => all.value.find((find) => find.id === id),
    put: (find) => set(withPut(all.value, find)),
    putAll: (finds) => set(finds.reduce(withPut, all.value)),
    remove: (id) => set(all.value.filter((find) => find.id !== id)),
  };
}

/** The finds with one put in its place, or at the end. */
function withPut(finds: readonly OwnFind[], find: OwnFind): readonly OwnFind[] {
  const known = finds.some(({ id }) => id === find.id);
  return known ? finds.map((one) => (one.id === find.id ? find : one)) : [...finds, find];
}

function findsIn(value: unknown): OwnFind[] | null {
  if (!isRecord(value) || value.version !== VERSION || !Array.isArray(value.finds)) return null;
  return value.finds.flatMap((one: unknown) => ownFindIn(one) ?? []);
}

/** A find as it was kept, or as it stands in a file; null where it is none. Of its answers those of the right shape are taken, of a name as much as the form takes. */
export function ownFindIn(value: unknown): OwnFind | null {
  if (!isRecord(value) || typeof value.id !== "string" || value.id === "") return null;
  const name = typeof value.name === "string" ? value.name.slice(0, LONGEST_NAME) : "";
  const copied = typeof value.copyOf === "string" ? { copyOf: value.copyOf } : {};
  return { id: value.id, name, answers: parsedAnswers(value.answers), ...copied };
}

/** A new find with nothing said about it. */
export function newOwnFind(): OwnFind {
  const id = `own-${Date.now().toString(36)}-${Math.floor(Math.random() * 1e6).toString(36)}`;
  return { id, name: "", answers: NO_ANSWERS };
}

/** An own find as one on the chart; null while too little is known to ask. */
export function asFind(own: OwnFind, checks: readonly Check[], goal: number, unnamed: string): Find | null {
  if (!isComplete(own.answers)) return null;
  const name = own.name.trim() === "" ? unnamed : own.name.trim();
  return {
    id: own.id,
    name,
    called: own.name.trim() === "" ? "it" : name,
    where: "",
    line: "",
    invented: false,
    ...(own.copyOf === undefined ? {} : { copyOf: own.copyOf }),
    body: bodyOf(own.answers, checks, goal),
  };
}
