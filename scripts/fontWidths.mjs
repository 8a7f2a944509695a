// Writes src/sheet/fontWidths.ts: the advance widths of the typeface of the sheets, read from its TrueType files.
//
//   cd "$(mktemp -d)" && npm install @expo-google-fonts/ibm-plex-sans-condensed@0.4.1
//   node scripts/fontWidths.mjs DIR/node_modules/@expo-google-fonts/ibm-plex-sans-condensed
//
// Table layouts after ISO/IEC 14496-22 (Open Font Format): head, hhea, hmtx, OS/2 and cmap subtable format 4.

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const FILES = {
  400: "400Regular/IBMPlexSansCondensed_400Regular.ttf",
  600: "600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf",
  700: "700Bold/IBMPlexSansCondensed_700Bold.ttf",
};

/** First and last code points of the blocks a sheet may use: Latin, its extensions, punctuation, arrows, signs of formulas. */
const RANGES = [
  [0x20, 0x7e],
  [0xa1, 0xac],
  [0xae, 0x17f],
  [0x2013, 0x2026],
  [0x2030, 0x203a],
  [0x20ac, 0x20ac],
  [0x2190, 0x2199],
  [0x2206, 0x2206],
  [0x2211, 0x2212],
  [0x221a, 0x221a],
  [0x222b, 0x222b],
  [0x2264, 0x2265],
  [0x2713, 0x2713],
];

function tablesOf(font) {
  const tables = {};
  for (let at = 12, left = font.readUInt16BE(4); left > 0; at += 16, left--) {
    tables[font.toString("latin1", at, at + 4)] = font.subarray(font.readUInt32BE(at + 8));
  }
  return tables;
}

/** Maps a code point to a glyph by the first Unicode subtable of format 4; 0 = the font lacks it. */
function glyphFinder(cmap) {
  for (let at = 4, left = cmap.readUInt16BE(2); left > 0; at += 8, left--) {
    const subtable = cmap.subarray(cmap.readUInt32BE(at + 4));
    if (subtable.readUInt16BE(0) === 4) return (code) => glyphInSegments(subtable, code);
  }
  throw new Error("the font has no cmap subtable of format 4");
}

function glyphInSegments(subtable, code) {
  const doubled = subtable.readUInt16BE(6);
  for (let segment = 0; segment < doubled; segment += 2) {
    if (subtable.readUInt16BE(14 + segment) < code) continue;
    const start = subtable.readUInt16BE(16 + doubled + segment);
    if (start > code) return 0;
    const delta = subtable.readUInt16BE(16 + 2 * doubled + segment);
    const offsetAt = 16 + 3 * doubled + segment;
    const offset = subtable.readUInt16BE(offsetAt);
    if (offset === 0) return (code + delta) & 0xffff;
    const glyph = subtable.readUInt16BE(offsetAt + offset + 2 * (code - start));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  }
  return 0;
}

/** Characters by advance width in thousandths of the type size, and the height of the capitals likewise. */
function measure(path) {
  const tables = tablesOf(readFileSync(path));
  const unitsPerEm = tables.head.readUInt16BE(18);
  const perMille = (units) => Math.round((units * 1000) / unitsPerEm);
  const lastFull = tables.hhea.readUInt16BE(34) - 1;
  const glyphOf = glyphFinder(tables.cmap);
  const byWidth = new Map();
  for (const [first, last] of RANGES) {
    for (let code = first; code <= last; code++) {
      const glyph = glyphOf(code);
      if (glyph === 0) continue;
      const width = perMille(tables.hmtx.readUInt16BE(4 * Math.min(glyph, lastFull)));
      byWidth.set(width, (byWidth.get(width) ?? "") + String.fromCodePoint(code));
    }
  }
  return { capital: perMille(tables["OS/2"].readUInt16BE(88)), byWidth };
}

const directory = process.argv[2];
if (directory === undefined) throw new Error("give the folder of the font package");

let text = `// Advance widths of IBM Plex Sans Condensed (SIL Open Font License 1.1, © 2017 IBM Corp.), written by
// scripts/fontWidths.mjs from @expo-google-fonts/ibm-plex-sans-condensed 0.4.1. Do not edit by hand.
//
// A measuring canvas would give another width in the browser than on the command line; a table does not.

/** Weights of the typeface a sheet may use. */
export type FontWeight = 400 | 600 | 700;

`;
const measured = Object.entries(FILES).map(([weight, file]) => [weight, measure(join(directory, file))]);
const capitals = new Set(measured.map(([, { capital }]) => capital));
if (capitals.size !== 1) throw new Error("the weights differ in the height of their capitals");
text += `/** Height of a capital, thousandths of the type size. */\nexport const CAPITAL_HEIGHT = ${[...capitals][0]};\n\n`;
text +=
  "/** For each weight: advance width in thousandths of the type size, and the characters that have it. */\n";
text +=
  "export const CHARACTERS_BY_WIDTH: {\n  readonly [W in FontWeight]: readonly (readonly [width: number, characters: string])[];\n} = {\n";
for (const [weight, { byWidth }] of measured) {
  text += `  ${weight}: [\n`;
  for (const [width, characters] of [...byWidth].sort((a, b) => a[0] - b[0])) {
    text += `    [${width}, ${JSON.stringify(characters)}],\n`;
  }
  text += "  ],\n";
}
writeFileSync(new URL("../src/sheet/fontWidths.ts", import.meta.url), `${text}};\n`);
