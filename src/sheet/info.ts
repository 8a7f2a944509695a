// What a sheet says beside the fill itself: title block, masses, limits. Plain data, gathered once per unit.

import { type PinRule, pinRuleOf } from "../fill/accessories.ts";
import { sizeText } from "../fill/billCsv.ts";
import type { UnitFill } from "../fill/result.ts";
import type { Kit, Piece } from "../kit/kit.ts";
import { ruleValue } from "../kit/kit.ts";
import type { Language, Project, Storey, Unit } from "../plan/project.ts";
import type { Kg, Mm } from "../units.ts";
import type { SmallPaper } from "./paper.ts";

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
  /** Of all words on the sheets. */
  readonly language: Language;
  /** Of a person's sheets; plans lie on the large paper that goes with it. */
  readonly paper: SmallPaper;
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
  /** Depth of the frames of panels behind the face as the kit states it, mm; null = not stated. */
  readonly frameDepth: Mm | null;
  /** By what the kit counts pins; null = it gives no rule. */
  readonly pins: PinRule | null;
  /** Heights of the tie rows above the floor as the kit states them, mm. */
  readonly tieRows: readonly Mm[];
  /** Title block: what the caller knows. Empty fields are left open, to be written by hand. */
  readonly document: string;
  readonly date: string;
  readonly madeBy: string;
  readonly checkedBy: string;
  readonly releasedBy: string;
}

/** What no project file holds: fields of the title block, and the paper. */
export type SheetFields = Partial<
  Pick<SheetInfo, "paper" | "document" | "date" | "madeBy" | "checkedBy" | "releasedBy">
>;

/** Whether the sheets show the unit in its mirrored hand only. */
export function isAllMirrored({ pours }: Pick<SheetInfo, "pours">): boolean {
  return pours.length > 0 && pours.every(({ mirror }) => mirror);
}

/**
 * Gathers what the sheets of a unit say beside its fill.
 *
 * @param fill - the fill they are for: it knows the storey and the pours
 */
export function sheetInfoOf(
  source: { readonly project: Project; readonly unit: Unit; readonly kit: Kit },
  fill: Pick<UnitFill, "pours" | "storey">,
  fields: SheetFields = {},
): SheetInfo {
  const { project, unit, kit } = source;
  const pours = project.pours.filter((pour) => fill.pours.includes(pour.id));
  return {
    language: project.language,
    paper: fields.paper ?? "A4",
    project: project.name,
    revision: project.revision,
    unitName: unit.name === "" ? unit.id : unit.name,
    storey: fill.storey ?? project.storey,
    pours: pours.map(({ id, name, mirror }) => ({ id, name, mirror })),
    pieces: Object.fromEntries(kit.pieces.map((piece) => [piece.code, pieceInfo(piece)])),
    thickness: Object.fromEntries(unit.walls.map((wall) => [wall.id, wall.thickness])),
    personLimit: ruleValue(kit, "personLimit") ?? null,
    frameDepth: ruleValue(kit, "frameDepth") ?? null,
    pins: pinRuleOf(kit),
    tieRows: ruleValue(kit, "tieRows") ?? [],
    document: fields.document ?? "",
    date: fields.date ?? "",
    madeBy: fields.madeBy ?? "",
    checkedBy: fields.checkedBy ?? "",
    releasedBy: fields.releasedBy ?? "",
  };
}

function pieceInfo(piece: Piece): PieceInfo {
  return { mass: piece.mass, standard: piece.standard, size: sizeText(piece).replaceAll(" x ", " × ") };
}
