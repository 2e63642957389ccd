import { isRecord } from "../answers/parsed.ts";
import { type OwnFind, ownFindIn } from "../finds/own.ts";
import { handOver } from "../ownPrices/download.ts";
import { leftOut } from "./leftOut.ts";

/** What a file of finds calls itself. */
export const FORMAT = "spokeworth-finds";
const VERSION = 1;

/** A find read from a file. */
export interface ReadFind {
  readonly find: OwnFind;
  /** What its entry holds that could not be read, by path. */
  readonly lost: readonly string[];
}

/** What was read from a file, entry by entry in its order; null for an entry that is no find. Or what is wrong with the whole. */
export type ReadFile =
  | { readonly entries: readonly (ReadFind | null)[] }
  | { readonly wrong: "no-json" | "foreign" | "newer" };

/**
 * Finds as a file that `readFinds` reads back: JSON in UTF-8, with the format, its version, the day and each find whole.
 * @param today ISO 8601
 */
export function findsToJson(finds: readonly OwnFind[], today: string): string {
  return `${JSON.stringify({ format: FORMAT, version: VERSION, saved: today, finds }, null, 2)}\n`;
}

/** Reads a file of finds. */
export function readFinds(text: string): ReadFile {
  const file = parsed(text.replace(/^\ufeff/, ""));
  if (file === undefined) return { wrong: "no-json" };
  if (!isRecord(file) || file.format !== FORMAT || !Array.isArray(file.finds)) return { wrong: "foreign" };
  if (typeof file.version !== "number" || file.version > VERSION) return { wrong: "newer" };
  return { entries: file.finds.map(readEntry) };
}

function readEntry(entry: unknown): ReadFind | null {
  const find = ownFindIn(entry);
  return find === null ? null : { find, lost: leftOut(entry, find) };
}

/** Hands the user a file of finds. */
export function saveFinds(finds: readonly OwnFind[], today: string): void {
  const json = findsToJson(finds, today);
  handOver(`finds-${today}.json`, new Blob([json], { type: "application/json" }));
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
