/** A JSON document that changes only with the service: its text and the tag of its content (RFC 9110, section 8.8.3). */
export interface CachedDocument {
  readonly text: string;
  readonly etag: string;
}

/** The document of a value, tagged with the SHA-256 of its text. */
export async function cachedDocument(value: unknown): Promise<CachedDocument> {
  const text = JSON.stringify(value);
  const digest = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  const hex = [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return { text, etag: `"${hex.slice(0, 32)}"` };
}

/** The document; 304 without a body to whoever names its tag in If-None-Match (RFC 9110, section 13.1.2). */
export function answerDocument({ headers }: Request, { text, etag }: CachedDocument): Response {
  const caching = { ETag: etag, "Cache-Control": "no-cache" };
  if (isKnown(headers.get("If-None-Match") ?? "", etag))
    return new Response(null, { status: 304, headers: caching });
  return new Response(text, { headers: { ...caching, "Content-Type": "application/json" } });
}

/** Compared weakly, as the header asks. */
function isKnown(ifNoneMatch: string, etag: string): boolean {
  const tags = ifNoneMatch.split(",").map((tag) => tag.trim().replace(/^W\//, ""));
  return tags.includes(etag) || tags.includes("*");
}
