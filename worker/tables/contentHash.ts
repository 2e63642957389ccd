/**
 * FNV-1a, 64 bits, of a text's code units, low byte first, and the high byte where it is not zero: for ASCII text the hash of its bytes.
 * hash = (hash XOR byte) x 1099511628211 mod 2^64, from 14695981039346656037. The prime is 2^40 + 435, so the product is the hash shifted
 * by 40 bits plus 435 times the hash, carried here between parts of 16 bits so that every product is a small integer.
 * Source: Fowler, Noll, Vo and Eastlake, The FNV Non-Cryptographic Hash Algorithm (IETF draft-eastlake-fnv).
 * @returns 16 hexadecimal digits
 */
export function contentHash(text: string): string {
  let high = 0xcbf29ce4 | 0;
  let low = 0x84222325 | 0;
  const take = (byte: number) => {
    low ^= byte;
    const bottom = (low & 0xffff) * 435;
    const top = (low >>> 16) * 435 + (bottom >>> 16);
    high = (Math.imul(high, 435) + (low << 8) + (top >>> 16)) | 0;
    low = (top << 16) | (bottom & 0xffff);
  };
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at);
    take(unit & 0xff);
    if (unit > 0xff) take(unit >>> 8);
  }
  return hexadecimal(high) + hexadecimal(low);
}

function hexadecimal(half: number): string {
  return (half >>> 0).toString(16).padStart(8, "0");
}
