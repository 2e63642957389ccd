/** Bytes as text that may stand in an address: base64url without padding (RFC 4648, section 5). */
export function toBase64Url(bytes: Uint8Array): string {
  const letters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return btoa(letters).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** The bytes of such a text; null where it is none. */
export function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | null {
  if (!/^[\w-]*$/.test(text)) return null;
  try {
    return Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (letter) =>
      letter.charCodeAt(0),
    );
  } catch {
    return null;
  }
}
