// Makes the sheets of a project and hands them out by key: beside the page in a worker, or in it where there is none.
//
// Fill and checks are worked out once for each state of the project; another date only lays the sheets out anew. Units and hands
// are made one after the other, so that the first can be looked at while the others are on the way.

import { checkProject, type ProjectChecks } from "../../assess/checkProject.ts";
import { fillProject } from "../../fill/fillProject.ts";
import type { FillDocument } from "../../fill/result.ts";
import type { Union } from "../../geom/union.ts";
import { sheetsToHtml } from "../../sheet/html.ts";
import type { SheetFields } from "../../sheet/info.ts";
import type { Sheet } from "../../sheet/mark.ts";
import type { FontFiles } from "../../sheet/pdf/write.ts";
import { problemText } from "../../sheet/problemText.ts";
import { sheetIndexCsv } from "../../sheet/sheetIndex.ts";
import { fileTitle, type HandedEntry, handedEntries, type SheetSet, setOf } from "../../sheet/sheetSet.ts";
import { sheetToSvg } from "../../sheet/svg.ts";
import { projectTables, type Table } from "../../sheet/tables.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import { sheetKeyOf } from "./choice.ts";
import type { SetEntry, SheetList } from "./sheetList.ts";

/** Addresses of the typeface, by weight. */
export type FontAddresses = { readonly [W in keyof FontFiles]: string };

/** All but `make` answer for the sheets made last. Keys that are not among them are passed over. */
export interface SheetMaker {
  /**
   * One at a time. Rejects where the fill or a sheet breaks down: a fault of the program.
   *
   * @param onPart - is told the list so far while more is on the way
   */
  readonly make: (
    plan: WorkPlan,
    fields: SheetFields,
    onPart: (list: SheetList) => void,
  ) => Promise<SheetList>;
  readonly svg: (key: string) => string | null;
  readonly html: (keys: readonly string[], fonts: FontAddresses) => string;
  readonly pdf: (keys: readonly string[]) => Promise<Uint8Array>;
  readonly tables: () => readonly Table[];
}

interface Made {
  readonly plan: WorkPlan;
  readonly fill: FillDocument;
  readonly checks: ProjectChecks;
  /** They depend on the fill alone; none until all sets are there. */
  readonly tables: readonly Table[];
  readonly fields: SheetFields;
  /** All that there will be sets of. */
  readonly entries: readonly HandedEntry[];
  readonly sets: readonly SheetSet[];
}

/**
 * @param fonts - gives the files of the typeface when a PDF is first asked for
 * @param pause - lets other jobs have their turn
 */
export function createSheetMaker(
  union: Union,
  fonts: () => Promise<FontFiles>,
  pause: () => Promise<unknown>,
): SheetMaker {
  let made: Made | null = null;
  const bundle = (keys: readonly string[]) => bundleOf(made, keys);
  return {
    make: async (plan, fields, onPart) => {
      const known = made?.plan === plan ? made : null;
      const fill = known?.fill ?? fillProject(plan.project, plan.kit, union);
      const checks = known?.checks ?? checkProject({ ...plan, fill });
      const entries = handedEntries({ ...plan, fill }, fields);
      made = { plan, fill, checks, tables: known?.tables ?? [], fields, entries, sets: [] };
      for (const entry of entries) {
        if (made.sets.length > 0) {
          onPart(listOf(made));
          await pause();
        }
        made = { ...made, sets: [...made.sets, setOf(entry, { union, checks })] };
      }
      if (made.tables.length === 0) made = { ...made, tables: projectTables({ ...plan, fill }) };
      return listOf(made);
    },
    svg: (key) => {
      const [sheet] = bundle([key]).sheets;
      return sheet === undefined ? null : sheetToSvg(sheet);
    },
    html: (keys, addresses) => {
      const { sheets, title } = bundle(keys);
      return sheetsToHtml(sheets, { title, language: made?.plan.project.language ?? "en", fonts: addresses });
    },
    pdf: async (keys) => {
      const { sheets, title } = bundle(keys);
      const [language, date] = [made?.plan.project.language ?? "en", made?.fields.date ?? ""];
      const [{ sheetsToPdf }, files] = await Promise.all([import("../../sheet/pdf/write.ts"), fonts()]);
      return sheetsToPdf(sheets, files, { title, author: "", language, date });
    },
    tables: () => (made === null ? [] : [...made.tables, indexOf(made)]),
  };
}

const INDEX = "sheets.csv";

// The list of all sheets with their codes, each set in a PDF of its own as the command line writes it.
function indexOf({ sets, plan }: Made): Table {
  const rows = sets.flatMap(({ name, sheets }) =>
    sheets.map((sheet, index) => ({ file: `${name}.pdf`, page: index + 1, sheet })),
  );
  return { name: INDEX, text: sheetIndexCsv(rows, plan.project.revision) };
}

interface Bundle {
  readonly sheets: readonly Sheet[];
  readonly title: string;
}

// In the order of binding, whatever the order of the keys.
function bundleOf(made: Made | null, keys: readonly string[]): Bundle {
  if (made === null) return { sheets: [], title: "" };
  const wanted = new Set(keys);
  const parts = made.sets
    .map(({ name, sheets }) => ({
      name,
      sheets: sheets.filter((sheet) => wanted.has(sheetKeyOf(name, sheet.name))),
    }))
    .filter(({ sheets }) => sheets.length > 0);
  const { name } = made.plan.project;
  const [only] = parts;
  return {
    sheets: parts.flatMap(({ sheets }) => sheets),
    title: fileTitle(name, parts.length === 1 ? only?.name : ""),
  };
}

function listOf({ plan, fill, tables, entries, sets }: Made): SheetList {
  const { project } = plan;
  const open = fill.units.map((entry) => {
    const places = [...entry.faces, ...entry.soffits].flatMap(({ unfilled }) =>
      unfilled.map(({ problem }) => problem),
    );
    const pointedAt = new Set(places);
    const faults = entry.problems.filter(
      ({ severity }, index) => severity === "error" || pointedAt.has(index),
    );
    return { count: places.length, faults: faults.map(({ message }) => message) };
  });
  const faults = new Set(open.flatMap((each) => each.faults));
  return {
    sets: sets.map((set) => setEntry(set, entries)),
    tables: tables.length === 0 ? [] : [...tables.map(({ name }) => name), INDEX],
    unfilled: open.reduce((sum, { count }) => sum + count, 0),
    faults: [...faults].map((message) => problemText(message, project.language)),
  };
}

function setEntry({ name, source, sheets }: SheetSet, entries: readonly HandedEntry[]): SetEntry {
  const { info, isMirrored, unit } = source;
  const storeys = entries.filter((entry) => entry.unit === unit).map((entry) => entry.info.storey);
  const heights = new Set(storeys.map(({ clearHeight }) => clearHeight));
  return {
    name,
    unit: info.unitName,
    clearHeight: heights.size > 1 ? info.storey.clearHeight : null,
    isMirrored,
    pours: info.pours.map((pour) => (pour.name === "" ? pour.id : pour.name)),
    sheets: sheets.map(({ name: own, kind, title, room, width, height }) => ({
      key: sheetKeyOf(name, own),
      kind,
      title,
      room: room ?? null,
      width,
      height,
    })),
  };
}
