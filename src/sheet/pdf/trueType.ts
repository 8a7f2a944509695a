// Reads what a subset needs out of a TrueType font: its tables, which glyph a character has, the bytes of a glyph.
//
// Table layouts after ISO/IEC 14496-22 (Open Font Format).

export interface TrueType {
  /** By its four letters. @throws {RangeError} if the font lacks it */
  readonly table: (tag: string) => DataView;
  readonly hasTable: (tag: string) => boolean;
  /** 0 = the font lacks the character. */
  readonly glyphOf: (codePoint: number) => number;
  /** Outline of a glyph; empty for a space. */
  readonly outlineOf: (glyph: number) => Uint8Array;
  /** Left side bearing of a glyph, in units of the font. */
  readonly bearingOf: (glyph: number) => number;
}

/** @throws {RangeError} if the bytes are no TrueType font with a Unicode map of format 4 */
export function readTrueType(bytes: Uint8Array): TrueType {
  const tables = tablesOf(bytes);
  const table = (tag: string): DataView => {
    const found = tables.get(tag);
    if (found === undefined) throw new RangeError(`the font has no table "${tag}"`);
    return found;
  };
  const cmap = unicodeMap(table("cmap"));
  const isLong = table("head").getInt16(50) === 1;
  const loca = table("loca");
  const glyf = table("glyf");
  const start = (glyph: number) => (isLong ? loca.getUint32(glyph * 4) : loca.getUint16(glyph * 2) * 2);
  const lastFull = table("hhea").getUint16(34) - 1;
  return {
    table,
    hasTable: (tag) => tables.has(tag),
    glyphOf: (codePoint) => (codePoint > 0xffff ? 0 : glyphInSegments(cmap, codePoint)),
    outlineOf: (glyph) => {
      const from = start(glyph);
      return new Uint8Array(glyf.buffer, glyf.byteOffset + from, start(glyph + 1) - from);
    },
    bearingOf: (glyph) =>
      glyph <= lastFull
        ? table("hmtx").getInt16(4 * glyph + 2)
        : table("hmtx").getInt16(4 * (lastFull + 1) + 2 * (glyph - lastFull - 1)),
  };
}

function tablesOf(bytes: Uint8Array): ReadonlyMap<string, DataView> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.byteLength < 12 || view.getUint32(0) !== 0x00010000) throw new RangeError("not a TrueType font");
  const tables = new Map<string, DataView>();
  const count = view.getUint16(4);
  for (let at = 12; at < 12 + 16 * count; at += 16) {
    const tag = String.fromCharCode(...bytes.subarray(at, at + 4));
    const offset = bytes.byteOffset + view.getUint32(at + 8);
    tables.set(tag, new DataView(bytes.buffer, offset, view.getUint32(at + 12)));
  }
  return tables;
}

/** The first subtable of format 4, which maps the characters of the basic plane. */
function unicodeMap(cmap: DataView): DataView {
  const count = cmap.getUint16(2);
  for (let at = 4; at < 4 + 8 * count; at += 8) {
    const subtable = new DataView(cmap.buffer, cmap.byteOffset + cmap.getUint32(at + 4));
    if (subtable.getUint16(0) === 4) return subtable;
  }
  throw new RangeError("the font has no map of format 4");
}

function glyphInSegments(map: DataView, codePoint: number): number {
  const doubled = map.getUint16(6);
  for (let segment = 0; segment < doubled; segment += 2) {
    if (map.getUint16(14 + segment) < codePoint) continue;
    const start = map.getUint16(16 + doubled + segment);
    if (start > codePoint) return 0;
    const delta = map.getUint16(16 + 2 * doubled + segment);
    const offsetAt = 16 + 3 * doubled + segment;
    const offset = map.getUint16(offsetAt);
    if (offset === 0) return (codePoint + delta) & 0xffff;
    const glyph = map.getUint16(offsetAt + offset + 2 * (codePoint - start));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
}
