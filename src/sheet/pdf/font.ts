// A font of a PDF: collects the characters that the pages use, then writes a subset of only these.
//
// A character of the document has a number of its own, in the order of first use, also one that the typeface lacks:
// it shows as an empty box, but is found, selected and copied as what it is.

import { contentHash } from "../contentHash.ts";
import { CAPITAL_HEIGHT, type FontWeight } from "../fontWidths.ts";
import { advanceOf } from "../lettering.ts";
import { hex4, type PdfFile, utf16Hex } from "./objects.ts";
import { subsetFont } from "./subset.ts";
import { readTrueType } from "./trueType.ts";

export interface PdfFont {
  /** The text as hexadecimal digits of the numbers of its characters. */
  readonly encode: (text: string) => string;
  /** Writes the font with the characters encoded so far; gives the number of its object. Null if there are none. */
  readonly write: (file: PdfFile) => number | null;
}

/** Names of the subsets. The typeface's own name is reserved. */
const NAMES: { readonly [W in FontWeight]: string } = {
  400: "SheetSans-Regular",
  600: "SheetSans-SemiBold",
  700: "SheetSans-Bold",
};

/** Breadth of an upright stem, thousandths of the type size; a viewer without the font would go by it. */
const STEMS: { readonly [W in FontWeight]: number } = { 400: 80, 600: 115, 700: 135 };

/** Most lines in one block of a character map. @see ISO 32000-1, 9.10.3 */
const BLOCK = 100;

/** @param bytes - the TrueType file of the weight, 1000 units to the type size */
export function pdfFont(bytes: Uint8Array, weight: FontWeight): PdfFont {
  const numbers = new Map<string, number>();
  return {
    encode(text) {
      let digits = "";
      for (const character of text) {
        const number = numbers.get(character) ?? numbers.size + 1;
        numbers.set(character, number);
        digits += hex4(number);
      }
      return digits;
    },
    write: (file) => (numbers.size === 0 ? null : writeFont(file, bytes, weight, [...numbers.keys()])),
  };
}

function writeFont(
  file: PdfFile,
  bytes: Uint8Array,
  weight: FontWeight,
  characters: readonly string[],
): number {
  const font = readTrueType(bytes);
  const advances = characters.map((character) => advanceOf(character, weight));
  const glyphs = characters.map((character, index) => ({
    glyph: font.glyphOf(character.codePointAt(0)!),
    advance: advances[index]!,
  }));
  const data = subsetFont(font, [{ glyph: 0, advance: 500 }, ...glyphs]);
  const name = `${tagOf(characters)}+${NAMES[weight]}`;
  const stream = file.addStream(data, `/Length1 ${data.length}`);
  const [head, hhea] = [font.table("head"), font.table("hhea")];
  const bounds = [36, 38, 40, 42].map((at) => head.getInt16(at)).join(" ");
  const descriptor = file.add(
    `<< /Type /FontDescriptor /FontName /${name} /Flags 4 /FontBBox [${bounds}] /ItalicAngle 0 ` +
      `/Ascent ${hhea.getInt16(4)} /Descent ${hhea.getInt16(6)} /CapHeight ${CAPITAL_HEIGHT} ` +
      `/StemV ${STEMS[weight]} /FontFile2 ${stream} 0 R >>`,
  );
  const descendant = file.add(
    `<< /Type /Font /Subtype /CIDFontType2 /BaseFont /${name} /CIDToGIDMap /Identity ` +
      `/CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> ` +
      `/FontDescriptor ${descriptor} 0 R /DW 1000 /W [1 [${advances.join(" ")}]] >>`,
  );
  const map = file.addStream(unicodeMap(characters));
  return file.add(
    `<< /Type /Font /Subtype /Type0 /BaseFont /${name} /Encoding /Identity-H ` +
      `/DescendantFonts [${descendant} 0 R] /ToUnicode ${map} 0 R >>`,
  );
}

/** Six capitals that tell subsets apart. @see ISO 32000-1, 9.6.4 */
function tagOf(characters: readonly string[]): string {
  const digits = [...contentHash(characters.join("")).slice(0, 6)];
  return digits.map((digit) => String.fromCharCode(65 + Number.parseInt(digit, 16))).join("");
}

/** What each number stands for, so that text can be searched and copied. @see ISO 32000-1, 9.10.3 */
function unicodeMap(characters: readonly string[]): string {
  const lines = characters.map((character, index) => `<${hex4(index + 1)}> <${utf16Hex(character)}>\n`);
  let blocks = "";
  for (let at = 0; at < lines.length; at += BLOCK) {
    const block = lines.slice(at, at + BLOCK);
    blocks += `${block.length} beginbfchar\n${block.join("")}endbfchar\n`;
  }
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <FFFF>
endcodespacerange
${blocks}endcmap
CMapName currentdict /CMap defineresource pop
end
end
`;
}
