// The packing list and the accessory schedule as tables for a spreadsheet, beside the bill: RFC 4180, CR LF.
//
// Columns carry plain ASCII names, numbers a point, for programs as much as for people.

import { textCell } from "../../fill/billCsv.ts";
import { entryNames } from "../../fill/entryNames.ts";
import type { FillDocument, UnitFill } from "../../fill/result.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { roundTo } from "../../units.ts";
import { type SheetInfo, sheetInfoOf } from "../info.ts";
import { accessorySchedule } from "./accessoryRows.ts";
import { packingOf } from "./bundles.ts";
import { listItems } from "./listItems.ts";

/** One entry of a fill, with the name it goes by in every file and what its sheets say. */
interface ListedEntry {
  readonly name: string;
  readonly unit: UnitFill;
  readonly info: SheetInfo;
}

const PACKING = "unit,bundle,load_order,family,code,size_mm,place,room,quantity,mass_kg";
const ACCESSORIES = "unit,family,code,size_mm,needed,spare_percent,spare,issue,issued,returned,lost";

/**
 * The entries of a fill as drawn: a mirrored pour takes the same bundles.
 *
 * @throws {RangeError} if the fill is of another project
 */
export function listedEntries(made: {
  readonly fill: FillDocument;
  readonly project: Project;
  readonly kit: Kit;
}): readonly ListedEntry[] {
  const { fill, project, kit } = made;
  const names = entryNames(fill);
  return fill.units.map((unit, index) => {
    const drawn = project.units.find(({ id }) => id === unit.unit);
    if (drawn === undefined)
      throw new RangeError(`the fill has a unit "${unit.unit}" that the project lacks`);
    return { name: names[index]!, unit, info: sheetInfoOf({ project, unit: drawn, kit }, unit) };
  });
}

/**
 * One row for each bundle, code and place, in the order of need. `place` is room, outside or shared. Masses to 0.01 kg
 * for all pieces of the row. Quantities sum to the bill, code by code.
 */
export function packingCsv(entries: readonly ListedEntry[]): string {
  const rows = entries.flatMap(({ name, unit, info }) => {
    const { places, bundles } = packingOf(unit, info);
    return bundles.flatMap((bundle) =>
      bundle.rows.flatMap(({ item, byPlace }) =>
        byPlace.flatMap((quantity, index) => {
          const place = places[index]!;
          const load = bundles.length + 1 - bundle.number;
          const mass = roundTo(item.mass * quantity, 2);
          const size = plainSize(item.size);
          return quantity === 0
            ? []
            : [
                [
                  name,
                  bundle.number,
                  load,
                  item.family,
                  item.code,
                  size,
                  place.kind,
                  place.name,
                  quantity,
                  mass,
                ],
              ];
        }),
      ),
    );
  });
  return tableText(PACKING, rows);
}

/** One row for each accessory, then for each size of panel that has a spare; the last three columns are for a pen. */
export function accessoriesCsv(entries: readonly ListedEntry[]): string {
  const rows = entries.flatMap(({ name, unit, info }) => {
    const { rows: accessories, sparePanels } = accessorySchedule(listItems(unit, info));
    return [...accessories, ...sparePanels].map(({ item, needed, sparePercent, spare, issue }) => {
      const size = plainSize(item.size);
      return [name, item.family, item.code, size, needed, sparePercent ?? 0, spare, issue, "", "", ""];
    });
  });
  return tableText(ACCESSORIES, rows);
}

/** As in the bill: "600 x 2250", "2000 to 3500". */
function plainSize(size: string): string {
  return size.replaceAll("×", "x").replace("–", " to ");
}

function tableText(head: string, rows: readonly (readonly (string | number)[])[]): string {
  const lines = rows.map((row) =>
    row.map((cell) => (typeof cell === "number" ? `${cell}` : textCell(cell))).join(","),
  );
  return `${[head, ...lines].join("\r\n")}\r\n`;
}
