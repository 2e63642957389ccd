/** Far beyond 5,000 rows; a larger file is something else. */
export const MOST_BYTES = 5_000_000;

/**
 * The text of a file: UTF-8, or UTF-16 where its mark says so, or else Windows-1252, in which older spreadsheets write.
 */
export function textOf(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
