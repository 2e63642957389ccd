import { isRecord } from "../answers/parsed.ts";

const OFFSET_BASIS = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;

/** The 64-bit FNV-1a hash of a text's UTF-8 bytes, as 16 hexadecimal digits (Fowler, Noll and Vo). */
export function fnv1a(text: string): string {
  let hash = OFFSET_BASIS;
  for (const byte of new TextEncoder().encode(text)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * PRIME);
  }
  return hash.toString(16).padStart(16, "0");
}

/** A mark of what a value holds, the same in whatever order its fields stand. It tells contents apart; it protects nothing. */
export function fingerprint(value: unknown): string {
  return fnv1a(JSON.stringify(sorted(value)));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (!isRecord(value)) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, one]) => [key, sorted(one)]));
}
