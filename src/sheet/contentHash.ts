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
  for (const byte of utf8(text)) {
    const mixed = (low ^ byte) >>> 0;
    // hash × (2⁴⁰ + 1b3) modulo 2⁶⁴, in two words: 2⁴⁰ lifts the low word by a word and a byte.
    const product = mixed * PRIME_LOW;
    high = (high * PRIME_LOW + mixed * 0x100 + Math.floor(product / WORD)) % WORD;
    low = product % WORD;
  }
  return hex(high) + hex(low);
}

function hex(word: number): string {
  return word.toString(16).toUpperCase().padStart(8, "0");
}

function* utf8(text: string): Generator<number> {
  for (const character of text) {
    const code = character.codePointAt(0)!;
    if (code < 0x80) yield code;
    else if (code < 0x800) {
      yield 0xc0 | (code >> 6);
      yield 0x80 | (code & 0x3f);
    } else if (code < 0x10000) {
      yield 0xe0 | (code >> 12);
      yield 0x80 | ((code >> 6) & 0x3f);
      yield 0x80 | (code & 0x3f);
    } else {
      yield 0xf0 | (code >> 18);
      yield 0x80 | ((code >> 12) & 0x3f);
      yield 0x80 | ((code >> 6) & 0x3f);
      yield 0x80 | (code & 0x3f);
    }
  }
}
