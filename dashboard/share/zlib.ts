/**
 * Text as a zlib stream (RFC 1950). Its Adler-32 at the end tells a stream that was cut or altered, which bare deflate
 * would not: six bytes more.
 */
export async function deflated(text: string): Promise<Uint8Array> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream("deflate"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/**
 * The text of a zlib stream; null where it is cut, altered, no UTF-8, or unpacks to more than `mostBytes`: a few
 * kilobytes can unpack to gigabytes.
 */
export async function inflated(bytes: Uint8Array<ArrayBuffer>, mostBytes: number): Promise<string | null> {
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate")).getReader();
  const text = new TextDecoder("utf-8", { fatal: true });
  let read = "";
  let length = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return read + text.decode();
      length += value.length;
      if (length > mostBytes) {
        await reader.cancel();
        return null;
      }
      read += text.decode(value, { stream: true });
    }
  } catch {
    return null;
  }
}
