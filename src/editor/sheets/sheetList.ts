// What the view knows of the sheets without their marks: the list that the person reads, ticks and pages through.
//
//   unit, storey, hand ── kind ── sheet        a room's sheets by the name of the room, others by their title

import { PAPERS, type PaperSize } from "../../sheet/paper.ts";
import type { SheetKind } from "../../sheet/sheetSet.ts";
import type { Mm, PaperMm } from "../../units.ts";

export interface SheetEntry {
  /** Unique in the project: the name of its set and its own. */
  readonly key: string;
  readonly kind: SheetKind;
  readonly title: string;
  /** As {@link import("../../sheet/mark.ts").Sheet.room}; null = of the whole unit. */
  readonly room: string | null;
  readonly width: PaperMm;
  readonly height: PaperMm;
}

export interface SetEntry {
  readonly name: string;
  readonly unit: string;
  /** Clear height where the unit is poured at several, mm; null = at one only. */
  readonly clearHeight: Mm | null;
  readonly isMirrored: boolean;
  /** Names of the pours it is for. */
  readonly pours: readonly string[];
  readonly sheets: readonly SheetEntry[];
}

export interface SheetList {
  readonly sets: readonly SetEntry[];
  /** Names of the tables that lie beside the sheets. */
  readonly tables: readonly string[];
  /** Places of walls and soffits that the fill left open. */
  readonly unfilled: number;
  /** What stops the fill, in the language of the project, each sentence once. */
  readonly faults: readonly string[];
}

/** Which sheets are shown; null = all. */
export interface Filter {
  readonly kind: SheetKind | null;
  readonly room: string | null;
}

/** A row of the list. `keys` are those of all sheets below it, its own where it is a sheet. */
export type Row =
  | { readonly kind: "set"; readonly id: string; readonly set: SetEntry; readonly keys: readonly string[] }
  | {
      readonly kind: "kind";
      readonly id: string;
      readonly of: SheetKind;
      readonly keys: readonly string[];
    }
  | {
      readonly kind: "sheet";
      readonly id: string;
      readonly sheet: SheetEntry;
      /** What it is about, without what the rows over it say. */
      readonly label: string;
      /** Page of how many with the same name; null where there is one. */
      readonly page: { readonly number: number; readonly of: number } | null;
      readonly keys: readonly string[];
    };

/** The rows of the list in order, those of each set behind its own. A set or kind of which nothing is shown has none. */
export function rowsOf({ sets }: Pick<SheetList, "sets">, filter: Filter): readonly Row[] {
  return sets.flatMap((set): readonly Row[] => {
    const shown = set.sheets.filter((sheet) => isShown(sheet, filter));
    if (shown.length === 0) return [];
    const kinds = [...new Set(shown.map(({ kind }) => kind))];
    return [
      { kind: "set", id: `set ${set.name}`, set, keys: keysOf(shown) },
      ...kinds.flatMap((of): readonly Row[] => {
        const own = shown.filter(({ kind }) => kind === of);
        return [
          { kind: "kind", id: `kind ${set.name} ${of}`, of, keys: keysOf(own) },
          ...own.map((sheet): Row => {
            const same = set.sheets.filter(({ title, kind }) => title === sheet.title && kind === of);
            const page = same.length === 1 ? null : { number: same.indexOf(sheet) + 1, of: same.length };
            const label = sheet.room ?? withoutUnit(sheet.title, set.unit);
            return { kind: "sheet", id: sheet.key, sheet, label, page, keys: [sheet.key] };
          }),
        ];
      }),
    ];
  });
}

/** "Panel plan, Heron, mirrored" in the set of unit Heron is just the "Panel plan". */
function withoutUnit(title: string, unit: string): string {
  const at = title.indexOf(`, ${unit}`);
  return unit === "" || at < 1 ? title : title.slice(0, at);
}

function isShown(sheet: SheetEntry, { kind, room }: Filter): boolean {
  return (kind === null || sheet.kind === kind) && (room === null || sheet.room === room);
}

function keysOf(sheets: readonly SheetEntry[]): readonly string[] {
  return sheets.map(({ key }) => key);
}

/** All sheets in the order in which they are bound. */
export function allSheets({ sets }: Pick<SheetList, "sets">): readonly SheetEntry[] {
  return sets.flatMap(({ sheets }) => sheets);
}

/** Kinds and rooms that there are sheets of, in the order of the list, each once: what can be asked for. */
export function filterChoices(list: Pick<SheetList, "sets">): {
  readonly kinds: readonly SheetKind[];
  readonly rooms: readonly string[];
} {
  const sheets = allSheets(list);
  return {
    kinds: [...new Set(sheets.map(({ kind }) => kind))],
    rooms: [...new Set(sheets.flatMap(({ room }) => room ?? []))],
  };
}

/** The filter without what there is no sheet of any more. */
export function keptFilter(filter: Filter, list: Pick<SheetList, "sets">): Filter {
  const { kinds, rooms } = filterChoices(list);
  const kind = kinds.find((each) => each === filter.kind) ?? null;
  const room = rooms.find((each) => each === filter.room) ?? null;
  return kind === filter.kind && room === filter.room ? filter : { kind, room };
}

/** The paper a sheet lies on; null where it is none of the standard sizes. */
export function paperOf({ width, height }: Pick<SheetEntry, "width" | "height">): PaperSize | null {
  const names = ["A4", "A3", "Letter", "Tabloid"] as const;
  return names.find((name) => PAPERS[name].width === width && PAPERS[name].height === height) ?? null;
}
