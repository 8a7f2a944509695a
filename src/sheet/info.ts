// What a sheet says beside the fill itself: title block, masses, limits. Plain data, gathered once per unit.

import { sizeText } from "../fill/billCsv.ts";
import type { UnitFill } from "../fill/result.ts";
import type { Kit, Piece } from "../kit/kit.ts";
import { ruleValue } from "../kit/kit.ts";
import type { Project, Storey, Unit } from "../plan/project.ts";
import type { Kg, Mm } from "../units.ts";

/** What the kit says of one code. */
interface PieceInfo {
  readonly mass: Kg;
  /** A wall panel of the regular set; false makes it a filler. */
  readonly standard: boolean;
  /** Its dimensions as read on a list, mm: "600 × 2250". Empty where the kit has none. */
  readonly size: string;
}

interface PourInfo {
  readonly id: string;
  readonly name: string;
  /** The unit is poured as its reflection. */
  readonly mirror: boolean;
}

export interface SheetInfo {
  readonly project: string;
  readonly revision: string;
  readonly unitName: string;
  readonly storey: Storey;
  /** The pours of the unit, in working order. */
  readonly pours: readonly PourInfo[];
  readonly pieces: { readonly [code: string]: PieceInfo };
  /** Thickness by the id of the wall, mm. */
  readonly thickness: { readonly [wall: string]: Mm };
  /** The mass one person may lift as the kit states it; null = not stated. */
  readonly personLimit: Kg | null;
  /** Heights of the tie rows above the floor as the kit states them, mm. */
  readonly tieRows: readonly Mm[];
  /** Title block: what the caller knows. Empty fields are left open, to be written by hand. */
  readonly document: string;
  readonly date: string;
  readonly madeBy: string;
  readonly releasedBy: string;
}

/** Title block fields that no project file holds. */
export type TitleFields = Partial<Pick<SheetInfo, "document" | "date" | "madeBy" | "releasedBy">>;

/**
 * Gathers what the sheets of a unit say beside its fill.
 *
 * @param fill - the fill they are for: it knows the storey and the pours
 */
/** Whether the sheets show the unit in its mirrored hand only. */
export function isAllMirrored({ pours }: Pick<SheetInfo, "pours">): boolean {
  return pours.length > 0 && pours.every(({ mirror }) => mirror);
}

export function sheetInfoOf(
  source: { readonly project: Project; readonly unit: Unit; readonly kit: Kit },
  fill: Pick<UnitFill, "pours" | "storey">,
  fields: TitleFields = {},
): SheetInfo {
  const { project, unit, kit } = source;
  const pours = project.pours.filter((pour) => fill.pours.includes(pour.id));
  return {
    project: project.name,
    revision: project.revision,
    unitName: unit.name === "" ? unit.id : unit.name,
    storey: fill.storey ?? project.storey,
    pours: pours.map(({ id, name, mirror }) => ({ id, name, mirror })),
    pieces: Object.fromEntries(kit.pieces.map((piece) => [piece.code, pieceInfo(piece)])),
    thickness: Object.fromEntries(unit.walls.map((wall) => [wall.id, wall.thickness])),
    personLimit: ruleValue(kit, "personLimit") ?? null,
    tieRows: ruleValue(kit, "tieRows") ?? [],
    document: fields.document ?? "",
    date: fields.date ?? "",
    madeBy: fields.madeBy ?? "",
    releasedBy: fields.releasedBy ?? "",
  };
}

function pieceInfo(piece: Piece): PieceInfo {
  return { mass: piece.mass, standard: piece.standard, size: sizeText(piece).replaceAll(" x ", " × ") };
}
