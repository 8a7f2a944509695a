// Writes sheets as one HTML document that prints as exactly one page a sheet, each on paper of its own size.
//
// The page prints this document, and the command line writes it.

import type { Language } from "../plan/project.ts";
import type { FontWeight } from "./fontWidths.ts";
import type { Sheet } from "./mark.ts";
import { xmlText } from "./plainText.ts";
import { sheetNumber, sheetToSvg } from "./svg.ts";

export interface HtmlEntries {
  readonly title: string;
  readonly language: Language;
  /** Where the typeface lies, by weight: an address of the program's own, or a `data:` one. Null: only named. */
  readonly fonts: { readonly [W in FontWeight]: string } | null;
}

const STYLE = `body { margin: 0; }
svg { display: block; }
.sheet + .sheet { break-before: page; }
@media screen {
  body { background: #d8d8d8; padding: 8mm; }
  .sheet { width: max-content; margin: 0 auto 8mm; box-shadow: 0 0.5mm 2mm #0005; }
}
@media print { svg { width: 100%; height: 100%; } .sheet { print-color-adjust: exact; } }
`;

/** A whole document with one final newline. The same sheets give the same bytes. */
export function sheetsToHtml(sheets: readonly Sheet[], { title, language, fonts }: HtmlEntries): string {
  const sizes = [...new Set(sheets.map(sizeOf))];
  const pages = sizes.map((size, index) => `@page p${index} { size: ${size}; margin: 0; }\n`).join("");
  const rules = sizes
    .map((size, index) => {
      const [width, height] = size.split(" ");
      // A hair lower than the page, which binary fractions of a millimetre would otherwise make two.
      return `.p${index} { page: p${index}; } @media print { .p${index} { width: ${width}; height: calc(${height} - 0.02mm); overflow: hidden; } }\n`;
    })
    .join("");
  return [
    `<!doctype html>\n<html lang="${language}">\n<head>\n<meta charset="utf-8">\n`,
    `<title>${xmlText(title)}</title>\n`,
    `<style>\n${fonts === null ? "" : fontFaces(fonts)}${pages}${rules}${STYLE}</style>\n</head>\n<body>\n`,
    ...sheets.map((sheet, index) => {
      const page = sizes.indexOf(sizeOf(sheet));
      return `<section class="sheet p${page}">\n${sheetToSvg(sheet, `s${index + 1}`)}</section>\n`;
    }),
    "</body>\n</html>\n",
  ].join("");
}

function sizeOf({ width, height }: Sheet): string {
  return `${sheetNumber(width)}mm ${sheetNumber(height)}mm`;
}

function fontFaces(fonts: { readonly [W in FontWeight]: string }): string {
  return ([400, 600, 700] as const)
    .map(
      (weight) =>
        `@font-face { font-family: "IBM Plex Sans Condensed"; font-weight: ${weight}; src: url("${fonts[weight]}"); }\n`,
    )
    .join("");
}
