// What the commands need of the core, as a record of functions, so that a command can be tried without it.

import type { NudgeList } from "../fill/nudge/nudgeList.ts";
import type { Curve } from "../fill/optimise/tradeOff.ts";
import type { FillDocument } from "../fill/result.ts";
import type { Kit } from "../kit/kit.ts";
import type { Project } from "../plan/project.ts";
import type { SheetFields } from "../sheet/info.ts";
import type { Sheet } from "../sheet/mark.ts";
import type { FontFiles } from "../sheet/pdf/write.ts";
import type { MadeFill } from "../sheet/sheetSet.ts";
import type { Table } from "../sheet/tables.ts";
import type { StockTools } from "./commands/stock.ts";

/** The sheets of one unit, storey and hand, in the order in which they are bound. */
export interface PrintedSet {
  /** Becomes the name of a file. */
  readonly name: string;
  /** Their names become those of files; two sheets may share one. */
  readonly sheets: readonly Sheet[];
}

export interface FillTools extends StockTools {
  readonly fill: (project: Project, kit: Kit) => Promise<FillDocument>;
  /** @param seconds - when to stop; null: when the work allowed is done */
  readonly optimise: (project: Project, kit: Kit, seconds: number | null) => Promise<FillDocument>;
  /** What fewer widths and fewer fillers would cost. */
  readonly tradeOff: (project: Project, kit: Kit, seconds: number | null) => Promise<Curve>;
  /** The text of the project file that keeps the covers of a fill. */
  readonly keep: (project: Project, kit: Kit, fill: FillDocument) => Promise<string>;
  /** The same, and the moves of walls that would make the set cheaper; `seconds` ends both. */
  readonly optimiseWithNudges: (
    project: Project,
    kit: Kit,
    seconds: number | null,
  ) => Promise<{ readonly fill: FillDocument; readonly nudges: NudgeList }>;
  /** The typeface of the sheets. */
  readonly fonts: () => Promise<FontFiles>;
  /** What lies beside the sheets: bill, packing list, accessories, points to stake out. */
  readonly tables: (made: MadeFill) => readonly Table[];
  readonly sheets: (made: MadeFill, fields?: SheetFields) => Promise<readonly PrintedSet[]>;
}
