import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { contentHash } from "../../worker/tables/contentHash.ts";

/** 64-bit FNV-1a by its definition, in whole numbers of any size. */
function byDefinition(bytes: Uint8Array): string {
  let hash = 14695981039346656037n;
  for (const byte of bytes) hash = ((hash ^ BigInt(byte)) * 1099511628211n) & 0xffffffffffffffffn;
  return hash.toString(16).padStart(16, "0");
}

describe("the content hash", () => {
  // Test vectors of the FNV reference code (Fowler, Noll, Vo), 64-bit FNV-1a; from memory.
  test.each([
    ["", "cbf29ce484222325"],
    ["a", "af63dc4c8601ec8c"],
    ["b", "af63df4c8601f1a5"],
    ["foobar", "85944171f73967e8"],
  ])("of %j is the published FNV-1a value", (text, expected) => {
    expect(contentHash(text)).toBe(expected);
  });

  test("equals the definition in exact arithmetic on any bytes", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 64 }), (bytes) => {
        expect(contentHash(String.fromCharCode(...bytes))).toBe(byDefinition(bytes));
      }),
    );
  });

  test("hears the high byte of a character", () => {
    expect(contentHash("\u0141")).not.toBe(contentHash("A"));
  });
});
