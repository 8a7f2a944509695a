// Makes a TrueType font of a few glyphs out of a large one, for a document that uses only these.
//
// Glyphs are numbered anew in the order given; the parts of a composed letter (é = e + accent) follow behind. The new
// font has no name table: the original's name is reserved by its licence and must not stand on a changed font.

import type { TrueType } from "./trueType.ts";

/** A glyph of the new font. */
export interface SubsetGlyph {
  /** Number in the old font. */
  readonly glyph: number;
  /** Units of the font. */
  readonly advance: number;
}

/** The bytes of a font whose glyph n is `glyphs[n]`. */
export function subsetFont(font: TrueType, glyphs: readonly SubsetGlyph[]): Uint8Array {
  const { outlines, all } = withParts(font, glyphs);
  const offsets = [0];
  for (const outline of outlines) offsets.push(offsets.at(-1)! + padded(outline.length));
  const tables: (readonly [tag: string, bytes: Uint8Array])[] = [
    ...["cvt ", "fpgm"].flatMap((tag) => copied(font, tag)),
    ["glyf", joined(outlines)],
    ["head", changed(font, "head", (view) => [view.setUint32(8, 0), view.setInt16(50, 1)])],
    ["hhea", changed(font, "hhea", (view) => view.setUint16(34, all.length))],
    [
      "hmtx",
      numbers(
        2,
        all.flatMap(({ glyph, advance }) => [advance, font.bearingOf(glyph)]),
      ),
    ],
    ["loca", numbers(4, offsets)],
    ["maxp", changed(font, "maxp", (view) => view.setUint16(4, all.length))],
    ...copied(font, "prep"),
  ];
  return fontFile(tables);
}

const WORDS = 0x1;
const SCALE = 0x8;
const MORE = 0x20;
const TWO_SCALES = 0x40;
const MATRIX = 0x80;

/** The outlines with the numbers of their parts changed, and all glyphs, parts included. */
function withParts(font: TrueType, glyphs: readonly SubsetGlyph[]) {
  const all = [...glyphs];
  const outlines: Uint8Array[] = [];
  for (let index = 0; index < all.length; index++) {
    const outline = font.outlineOf(all[index]!.glyph).slice();
    const view = new DataView(outline.buffer);
    for (const at of partPlaces(view)) {
      const part = view.getUint16(at);
      let number = all.findIndex(({ glyph }) => glyph === part);
      if (number < 0) number = all.push({ glyph: part, advance: 0 }) - 1;
      view.setUint16(at, number);
    }
    outlines.push(outline);
  }
  return { outlines, all };
}

/** Where a composed outline names its parts; none in a simple one. */
function partPlaces(outline: DataView): readonly number[] {
  const places: number[] = [];
  if (outline.byteLength < 10 || outline.getInt16(0) >= 0) return places;
  let at = 10;
  for (let flags = MORE; (flags & MORE) !== 0; ) {
    flags = outline.getUint16(at);
    places.push(at + 2);
    at += 4 + ((flags & WORDS) !== 0 ? 4 : 2);
    if ((flags & SCALE) !== 0) at += 2;
    else if ((flags & TWO_SCALES) !== 0) at += 4;
    else if ((flags & MATRIX) !== 0) at += 8;
  }
  return places;
}

function copied(font: TrueType, tag: string): readonly (readonly [string, Uint8Array])[] {
  return font.hasTable(tag) ? [[tag, bytesOf(font.table(tag))]] : [];
}

function changed(font: TrueType, tag: string, change: (view: DataView) => unknown): Uint8Array {
  const bytes = bytesOf(font.table(tag)).slice();
  change(new DataView(bytes.buffer));
  return bytes;
}

function bytesOf({ buffer, byteOffset, byteLength }: DataView): Uint8Array {
  return new Uint8Array(buffer, byteOffset, byteLength);
}

/** Whole numbers, big end first, of two or four bytes. */
function numbers(size: 2 | 4, values: readonly number[]): Uint8Array {
  const bytes = new Uint8Array(size * values.length);
  const view = new DataView(bytes.buffer);
  values.forEach((value, index) => {
    if (size === 2) view.setInt16(2 * index, value);
    else view.setUint32(4 * index, value);
  });
  return bytes;
}

const padded = (length: number) => (length + 3) & ~3;

/** One behind the other, each filled up to whole words. */
function joined(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + padded(part.length), 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += padded(part.length);
  }
  return bytes;
}

/** The directory and the tables, which come in the order of their tags. */
function fontFile(tables: readonly (readonly [tag: string, bytes: Uint8Array])[]): Uint8Array {
  let power = 0;
  while (2 << power <= tables.length) power++;
  const range = 16 << power;
  const directory = new Uint8Array(12 + 16 * tables.length);
  const view = new DataView(directory.buffer);
  view.setUint32(0, 0x00010000);
  [tables.length, range, power, 16 * tables.length - range].forEach((value, index) => {
    view.setUint16(4 + 2 * index, value);
  });
  let offset = directory.length;
  tables.forEach(([tag, bytes], index) => {
    const at = 12 + 16 * index;
    [...tag].forEach((letter, k) => {
      view.setUint8(at + k, letter.charCodeAt(0));
    });
    view.setUint32(at + 4, checksum(bytes));
    view.setUint32(at + 8, offset);
    view.setUint32(at + 12, bytes.length);
    offset += padded(bytes.length);
  });
  const file = joined([directory, ...tables.map(([, bytes]) => bytes)]);
  const head = tables.findIndex(([tag]) => tag === "head");
  const at = view.getUint32(12 + 16 * head + 8) + 8;
  new DataView(file.buffer).setUint32(at, (0xb1b0afba - checksum(file)) >>> 0);
  return file;
}

/** Sum of the words, the last one filled up with zeros. */
function checksum(bytes: Uint8Array): number {
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) {
    const word =
      (bytes[at]! << 24) | ((bytes[at + 1] ?? 0) << 16) | ((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0);
    sum = (sum + word) >>> 0;
  }
  return sum;
}
