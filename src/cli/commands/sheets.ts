// The command `sheets`: a project file in, every sheet out as PDF, SVG or HTML, and the list of their codes.
//
// Everything is made in memory before the first byte is written, so an error on the way leaves nothing behind.

import { counted } from "../../fill/problems.ts";
import { sheetsToHtml } from "../../sheet/html.ts";
import type { SmallPaper } from "../../sheet/paper.ts";
import { sheetsToPdf } from "../../sheet/pdf/write.ts";
import { type IndexRow, sheetIndexCsv } from "../../sheet/sheetIndex.ts";
import { fileTitle } from "../../sheet/sheetSet.ts";
import { sheetToSvg } from "../../sheet/svg.ts";
import { fileNames } from "../fileNames.ts";
import type { FillTools, PrintedSet } from "../fillTools.ts";
import { type ExitCode, stop } from "../inputs.ts";
import type { Io, OutputFile } from "../io.ts";
import { fillSummary } from "../summary.ts";
import { errorCount, type Filled, placeFault, readAndFill } from "./made.ts";

export type SheetFormat = "pdf" | "svg" | "html";

export interface SheetsRequest {
  /** "-" = standard input. */
  readonly project: string;
  readonly out: string;
  readonly format: SheetFormat;
  readonly paper: SmallPaper;
  /** YYYY-MM-DD; "" = left open on the sheets. */
  readonly date: string;
}

const INDEX = "sheets.csv";

/** Runs the command. Writes nothing but messages unless all sheets could be made. */
export async function runSheets(request: SheetsRequest, io: Io, tools: FillTools): Promise<ExitCode> {
  const made = await readAndFill(request.project, io, tools);
  if (made.status === "failed") return stop(io, made.message);
  const sets = await tools.sheets(made.value, { paper: request.paper, date: request.date });
  const files = await sheetFiles(sets, made.value, request, tools);
  const tables = tools.tables(made.value).map(({ name, text }) => ({ path: name, content: text }));
  const outputs = [...files, ...tables].map((file) => ({ ...file, path: io.join(request.out, file.path) }));
  const paths = outputs.map(({ path }) => path);
  const fault = placeFault(paths, request.project, io, "two sheets");
  if (fault !== null) return stop(io, fault);
  const written = await io.write(outputs, request.out);
  if (written.status === "failed") return stop(io, `Cannot write ${written.path}: ${written.reason}.\n`);
  await io.err(made.value.warnings + fillSummary(made.value.fill) + counts(sets, files));
  return errorCount(made.value.fill) > 0 ? 1 : 0;
}

/** PDF and HTML: one file a set; SVG: one file a sheet. */
async function sheetFiles(
  sets: readonly PrintedSet[],
  { project }: Filled,
  { format, date }: SheetsRequest,
  tools: FillTools,
): Promise<readonly OutputFile[]> {
  const bundles =
    format === "svg"
      ? sets.flatMap(({ sheets }) => sheets.map((sheet) => ({ name: sheet.name, sheets: [sheet] })))
      : sets;
  const names = fileNames(
    bundles.map(({ name }) => name),
    `.${format}`,
  );
  const rows = bundles.flatMap(({ sheets }, index) =>
    sheets.map((sheet, page): IndexRow => ({ file: names[index]!, page: page + 1, sheet })),
  );
  const list: OutputFile = { path: INDEX, content: sheetIndexCsv(rows, project.revision) };
  const fonts = format === "svg" ? null : await tools.fonts();
  const written = bundles.map(({ name, sheets }, index): OutputFile => {
    const path = names[index]!;
    const title = fileTitle(project.name, name);
    const { language } = project;
    if (fonts === null) return { path, content: sheetToSvg(sheets[0]!) };
    if (format === "pdf") {
      return { path, content: sheetsToPdf(sheets, fonts, { title, author: "", language, date }) };
    }
    const embedded = { 400: dataUrl(fonts[400]), 600: dataUrl(fonts[600]), 700: dataUrl(fonts[700]) };
    return { path, content: sheetsToHtml(sheets, { title, language, fonts: embedded }) };
  });
  return [list, ...written];
}

/** The document needs nothing beside it. */
function dataUrl(font: Uint8Array): string {
  return `data:font/ttf;base64,${Buffer.from(font).toString("base64")}`;
}

function counts(sets: readonly PrintedSet[], files: readonly OutputFile[]): string {
  const sheets = sets.reduce((sum, set) => sum + set.sheets.length, 0);
  return `${counted(sheets, "sheet")} in ${counted(files.length - 1, "file")}, their codes in ${INDEX}.\n`;
}
