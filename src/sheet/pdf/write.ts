// Writes sheets as one PDF, page by page at their true size: text that can be searched, fonts inside, an outline.
//
// No clock and no chance goes into it: the same sheets give the same bytes, in the page and on the command line.

import type { Language } from "../../plan/project.ts";
import { contentHash } from "../contentHash.ts";
import type { FontWeight } from "../fontWidths.ts";
import type { Sheet } from "../mark.ts";
import { plainText } from "../plainText.ts";
import { type PdfFonts, pageContent, points } from "./content.ts";
import { pdfFont } from "./font.ts";
import { type PdfFile, pdfFile, textString } from "./objects.ts";

/** The typeface of the sheets as TrueType files, by weight. */
export type FontFiles = { readonly [W in FontWeight]: Uint8Array };

export interface PdfEntries {
  readonly title: string;
  /** "" = not stated. */
  readonly author: string;
  readonly language: Language;
  /** YYYY-MM-DD; "" or anything else: not stated. */
  readonly date: string;
}

/**
 * @returns the bytes of the file
 * @throws {RangeError} if a font is no TrueType file
 */
export function sheetsToPdf(sheets: readonly Sheet[], files: FontFiles, entries: PdfEntries): Uint8Array {
  const fonts: PdfFonts = {
    400: pdfFont(files[400], 400),
    600: pdfFont(files[600], 600),
    700: pdfFont(files[700], 700),
  };
  const file = pdfFile();
  const [catalog, tree, resources] = [file.reserve(), file.reserve(), file.reserve()];
  const contents = sheets.map((sheet) => pageContent(sheet, fonts));
  const pages = sheets.map((sheet, index) => {
    const size = `${points(sheet.width)} ${points(sheet.height)}`;
    const content = file.addStream(contents[index]!);
    return file.add(
      `<< /Type /Page /Parent ${tree} 0 R /MediaBox [0 0 ${size}] /Resources ${resources} 0 R ` +
        `/Contents ${content} 0 R >>`,
    );
  });
  file.add(`<< /Font << ${fontEntries(file, fonts)} >> >>`, resources);
  file.add(`<< /Type /Pages /Kids [${pages.map(reference).join(" ")}] /Count ${pages.length} >>`, tree);
  const outline = addOutline(file, sheets, pages);
  // Printed as large as it is drawn: scaled down, a 600 panel is no longer 12 mm.
  const asDrawn = "/ViewerPreferences << /DisplayDocTitle true /PrintScaling /None >>";
  file.add(
    `<< /Type /Catalog /Pages ${tree} 0 R ${outline}/Lang (${entries.language}) ${asDrawn} >>`,
    catalog,
  );
  const about = file.add(`<< ${aboutEntries(entries)} >>`);
  const id = contentHash([JSON.stringify(entries), ...contents].join("\n"));
  return file.finish(`/Root ${catalog} 0 R /Info ${about} 0 R /ID [<${id}${id}> <${id}${id}>]`);
}

const reference = (number: number) => `${number} 0 R`;

function fontEntries(file: PdfFile, fonts: PdfFonts): string {
  return ([400, 600, 700] as const)
    .flatMap((weight) => {
      const number = fonts[weight].write(file);
      return number === null ? [] : [`/F${weight} ${number} 0 R`];
    })
    .join(" ");
}

function aboutEntries({ title, author, date }: PdfEntries): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? [];
  const texts = [
    ["Title", plainText(title)],
    ["Author", plainText(author)],
  ] as const;
  return [
    ...texts.flatMap(([name, text]) => (text === "" ? [] : [`/${name} ${textString(text)}`])),
    "/Creator (Panelwright)",
    ...(year === undefined ? [] : [`/CreationDate (D:${year}${month}${day})`]),
  ].join(" ");
}

/** One line for each sheet, to go to it. Gives the entry of the catalog. */
function addOutline(file: PdfFile, sheets: readonly Sheet[], pages: readonly number[]): string {
  if (sheets.length === 0) return "";
  const root = file.reserve();
  const items = sheets.map(() => file.reserve());
  sheets.forEach((sheet, index) => {
    const beside = [
      ...(index > 0 ? [`/Prev ${items[index - 1]} 0 R`] : []),
      ...(index < items.length - 1 ? [`/Next ${items[index + 1]} 0 R`] : []),
    ].join(" ");
    file.add(
      `<< /Title ${textString(plainText(sheet.title))} /Parent ${root} 0 R ${beside} ` +
        `/Dest [${pages[index]} 0 R /Fit] >>`,
      items[index],
    );
  });
  file.add(
    `<< /Type /Outlines /First ${items[0]} 0 R /Last ${items.at(-1)} 0 R /Count ${items.length} >>`,
    root,
  );
  return `/Outlines ${root} 0 R `;
}
