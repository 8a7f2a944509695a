// Which sheets a unit has: the one list of all kinds, for the command line and the page alike.
//
//   fill entry ──▶ its hands: as drawn, mirrored ──▶ each kind of sheet in turn
//
// Mirrored pours have a set of their own: nobody is to turn a sheet round in the head.

import { checkProject, type ProjectChecks } from "../assess/checkProject.ts";
import { entryNames } from "../fill/entryNames.ts";
import { mirrorFill } from "../fill/mirror.ts";
import type { FillDocument, UnitFill } from "../fill/result.ts";
import type { Union } from "../geom/union.ts";
import type { Kit } from "../kit/kit.ts";
import type { Project, Unit } from "../plan/project.ts";
import { calculationSheets } from "./calculations/sheets.ts";
import { deltaSheets } from "./deltas/deltaSheet.ts";
import { type SheetFields, type SheetInfo, sheetInfoOf } from "./info.ts";
import { accessorySheets } from "./lists/accessorySheet.ts";
import { billSheets } from "./lists/billSheet.ts";
import { packingSheets } from "./lists/packingSheet.ts";
import { shortageSheets } from "./lists/shortageSheet.ts";
import type { Sheet } from "./mark.ts";
import { planAndElevations } from "./panelPlan/sheets.ts";
import { filePart } from "./plainText.ts";
import { roomSheets } from "./roomSheet.ts";
import { settingOutSheets } from "./settingOut/settingOutSheets.ts";
import { soffitPlanSheets } from "./soffitPlan/sheets.ts";

/** What the sheets of one fill entry in one hand are made from. */
export interface SheetSource {
  readonly project: Project;
  readonly kit: Kit;
  /** As drawn, also where the fill is mirrored. */
  readonly unit: Unit;
  /** In the hand of the sheets: mirrored already where {@link isMirrored}. Its pours are those of this hand. */
  readonly fill: UnitFill;
  readonly isMirrored: boolean;
  readonly info: SheetInfo;
  readonly union: Union;
  /** The fill of all units, as drawn, and the place of this entry in it. */
  readonly whole: FillDocument;
  readonly entry: number;
  /** Sheets of the whole project go with the first entry and hand. */
  readonly isFirst: boolean;
  /** Of the whole project, worked out once for all entries. */
  readonly checks: ProjectChecks;
  /** The entry with all its pours, for what holds in every hand; null in the second hand: it is said in the first. */
  readonly drawn: DrawnEntry | null;
}

/** An entry of the fill as drawn. */
interface DrawnEntry {
  /** As the ids of its faces begin: "A@2". */
  readonly name: string;
  readonly fill: UnitFill;
  readonly plan: Unit;
  readonly info: SheetInfo;
}

/** What a sheet is for. The panel plan goes with the elevations. */
export type SheetKind =
  | "room"
  | "elevations"
  | "soffit"
  | "setting-out"
  | "bill"
  | "packing"
  | "accessories"
  | "delta"
  | "calculations";

/** A sheet as it is bound. */
export interface BoundSheet extends Sheet {
  readonly kind: SheetKind;
}

/** All sheets of one fill entry in one hand, in the order in which they are bound. */
export interface SheetSet {
  /** For a file, without extension: "a", "a-storey-2-mirrored". Unique in a project. */
  readonly name: string;
  readonly source: SheetSource;
  readonly sheets: readonly BoundSheet[];
}

type SheetMaker = (source: SheetSource) => readonly Sheet[];

/** Every kind of sheet in the order in which they are bound. */
const KINDS: readonly (readonly [SheetKind, SheetMaker])[] = [
  ["room", ({ fill, info }) => roomSheets(fill, info)],
  ["elevations", ({ fill, info }) => planAndElevations(fill, info)],
  ["soffit", (source) => soffitPlanSheets(source)],
  ["setting-out", (source) => settingOutSheets(source)],
  ["bill", (source) => [...billSheets(source.fill, source.info), ...wholeShortage(source)]],
  ["packing", ({ fill, info }) => packingSheets(fill, info)],
  ["accessories", ({ fill, info }) => accessorySheets(fill, info)],
  ["delta", (source) => deltaSheets({ ...source, fill: source.whole }, source.fill, source, source.info)],
  ["calculations", (source) => calculationsOf(source)],
];

function wholeShortage({ isFirst, whole, fill, info, ...made }: SheetSource): readonly Sheet[] {
  return isFirst ? shortageSheets({ ...made, fill: whole }, fill, info) : [];
}

function calculationsOf({ drawn, kit, checks }: SheetSource): readonly Sheet[] {
  return drawn === null ? [] : calculationSheets({ ...drawn, storey: drawn.info.storey, kit, checks });
}

/** The sheets of one entry and hand. Their names are unique among those of their unit in this hand. */
export function sheetSet(source: SheetSource): readonly BoundSheet[] {
  return KINDS.flatMap(([kind, make]) => make(source).map((sheet) => ({ ...sheet, kind })));
}

/** The title of a file that holds sheets of one set; of several sets: without a name. */
export function fileTitle(project: string, name = ""): string {
  return [project, name].filter((part) => part !== "").join(", ");
}

/**
 * The sheets of a project: every entry of its fill in order, as drawn before mirrored.
 *
 * @throws {RangeError} if the fill is of another project
 */
export function sheetSets(
  made: MadeFill & { readonly union: Union },
  fields: SheetFields = {},
): readonly SheetSet[] {
  const checks = checkProject(made);
  return handedEntries(made, fields).map((entry) => setOf(entry, { union: made.union, checks }));
}

/** The sheets of one entry of {@link handedEntries}. */
export function setOf(
  { name, ending, ...entry }: HandedEntry,
  given: Pick<SheetSource, "union" | "checks">,
): SheetSet {
  const source = { ...entry, ...given };
  const sheets = sheetSet(source).map((sheet) => ({ ...sheet, name: sheet.name + ending }));
  return { name, source, sheets };
}

export interface MadeFill {
  readonly fill: FillDocument;
  readonly project: Project;
  readonly kit: Kit;
}

/** One entry of a fill in one hand. `name`: as {@link SheetSet}; `ending`: of the names of its sheets. */
export interface HandedEntry extends Omit<SheetSource, "union" | "checks"> {
  readonly name: string;
  readonly ending: string;
}

/**
 * Every entry of a fill in each hand it is poured in, as drawn before mirrored.
 *
 * @throws {RangeError} if the fill is of another project
 */
export function handedEntries(made: MadeFill, fields: SheetFields = {}): readonly HandedEntry[] {
  const { fill, project, kit } = made;
  const storeys = entryNames(fill);
  const plain = uniqueParts(project.units.map(({ id }) => id));
  return fill.units.flatMap((entry, index) => {
    const at = project.units.findIndex(({ id }) => id === entry.unit);
    const unit = project.units[at];
    if (unit === undefined)
      throw new RangeError(`the fill has a unit "${entry.unit}" that the project lacks`);
    const storey = storeys[index]!.slice(entry.unit.length).replace("@", "-storey-");
    const source = { project, unit, kit };
    const drawn = {
      name: storeys[index]!,
      fill: entry,
      plan: unit,
      info: sheetInfoOf(source, entry, fields),
    };
    return handsOf(entry, project, kit).map(({ hand, isMirrored }, order): HandedEntry => {
      const info = sheetInfoOf(source, hand, fields);
      const ending = storey + (isMirrored ? "-mirrored" : "");
      const own = { name: plain[at]! + ending, ending, fill: hand, isMirrored, info };
      const isFirst = index === 0 && order === 0;
      return { ...own, ...source, whole: fill, entry: index, isFirst, drawn: order === 0 ? drawn : null };
    });
  });
}

interface Hand {
  readonly hand: UnitFill;
  readonly isMirrored: boolean;
}

function handsOf(entry: UnitFill, project: Project, kit: Kit): readonly Hand[] {
  const isMirrored = (id: string) => project.pours.find((pour) => pour.id === id)?.mirror === true;
  const mirrored = entry.pours.filter(isMirrored);
  if (mirrored.length === 0) return [{ hand: entry, isMirrored: false }];
  const asDrawn = entry.pours.filter((id) => !isMirrored(id));
  const reflection: Hand = { hand: mirrorFill({ ...entry, pours: mirrored }, kit), isMirrored: true };
  return asDrawn.length === 0
    ? [reflection]
    : [{ hand: { ...entry, pours: asDrawn }, isMirrored: false }, reflection];
}

/** Ids as parts of a file's name; of two that read alike there, the later gets a number. */
function uniqueParts(ids: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return ids.map((id) => {
    const part = filePart(id) || "unit";
    let name = part;
    for (let number = 2; taken.has(name); number++) name = `${part}-${number}`;
    taken.add(name);
    return name;
  });
}
