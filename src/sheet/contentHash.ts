// A number for a text, so that two sheets can be told apart by it: the 64-bit FNV-1a hash.
//
// It tells an old sheet from a new one; it is no protection against somebody who wants to deceive.

/** @see IETF draft-eastlake-fnv: offset basis cbf29ce484222325, prime 2⁴⁰ + 1b3, bytes in order */
const BASIS = { high: 0xcbf29ce4, low: 0x84222325 } as const;
const PRIME_LOW = 0x1b3;
const WORD = 0x100000000;

/** 16 hexadecimal digits in capitals for the UTF-8 bytes of the text. The same everywhere; all sums are exact. */
export function contentHash(text: string): string {
  let { high, low }: { high: number; low: number } = BASIS;
  const mix = (byte: number) => {
    const mixed = (low ^ byte) >>> 0;
    // hash × (2⁴⁰ + 1b3) modulo 2⁶⁴, in two words: 2⁴⁰ lifts the low word by a word and a byte.
    const product = mixed * PRIME_LOW;
    low = product >>> 0;
    high = (high * PRIME_LOW + mixed * 0x100 + (product - low) / WORD) >>> 0;
  };
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at);
    if (unit < 0x80) {
      mix(unit);
      continue;
    }
    const code = text.codePointAt(at)!;
    for (const byte of utf8(code)) mix(byte);
    if (code > 0xffff) at++; // the second half of a pair
  }
  return hex(high) + hex(low);
}

function hex(word: number): string {
  return word.toString(16).toUpperCase().padStart(8, "0");
}

/** Bytes of a character beyond ASCII. @see RFC 3629, section 3 */
function utf8(code: number): readonly number[] {
  const last = (shift: number) => 0x80 | ((code >> shift) & 0x3f);
  if (code < 0x800) return [0xc0 | (code >> 6), last(0)];
  if (code < 0x10000) return [0xe0 | (code >> 12), last(6), last(0)];
  return [0xf0 | (code >> 18), last(12), last(6), last(0)];
}
