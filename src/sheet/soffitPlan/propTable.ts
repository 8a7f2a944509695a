// The table of props: where each stands, what it carries, and whether that is within what the kit states for it.

import type { Check } from "../../assess/checkDocument.ts";
import { propChecks } from "../../assess/propChecks.ts";
import type { UnitFill } from "../../fill/result.ts";
import type { Kit } from "../../kit/kit.ts";
import { readLoads } from "../../plan/loads.ts";
import type { Position, Project } from "../../plan/project.ts";
import type { SheetInfo } from "../info.ts";
import { plainText } from "../plainText.ts";
import type { Block } from "../settingOut/block.ts";
import { type TableColumn, table } from "../settingOut/tables.ts";
import type { SoffitPlanWords } from "./words.ts";

export interface PropSource {
  readonly project: Project;
  readonly kit: Kit;
  readonly fill: UnitFill;
  readonly info: SheetInfo;
  /** What a place reads from the datum of the setting-out sheet, mm. */
  readonly reading: (place: Position) => Position;
}

/** The checks of all props by piece id; none where the loads of the project cannot be read. */
export function checksOfProps({ project, kit, fill, info }: PropSource): ReadonlyMap<string, Check> {
  const read = readLoads(project.loads);
  if (read.status !== "ok") return new Map();
  const entry = { name: fill.unit, fill, storey: info.storey, kit, loads: read.value };
  return new Map(propChecks(entry).map((check) => [check.where.piece ?? "", check]));
}

/** One row a prop, in the order of their numbers; null where there is none. */
export function propTable(
  source: PropSource,
  props: { readonly [piece: string]: number },
  words: SoffitPlanWords,
): Block | null {
  const checks = checksOfProps(source);
  const { language } = source.info;
  const decimal = (value: number, places: number) => {
    const text = value.toFixed(places);
    return language === "en" ? text : text.replace(".", ",");
  };
  const rows = source.fill.soffits.flatMap(({ room, props: standing }) =>
    standing.map(({ piece, at, area }) => {
      const check = checks.get(piece);
      const [x, y] = source.reading(at);
      const isKnown = check?.value !== null && check?.value !== undefined;
      const isJudged = check?.utilisation !== null && check?.utilisation !== undefined;
      return [
        `${props[piece] ?? ""}`,
        plainText(room),
        decimal(x / 1000, 3),
        decimal(y / 1000, 3),
        decimal(area, 2),
        isKnown ? decimal(check.value, 1) : "",
        isJudged ? `${Math.ceil(check.utilisation * 100)} %` : "",
        verdict(check, words),
      ];
    }),
  );
  if (rows.length === 0) return null;
  const columns: readonly TableColumn[] = [
    { title: words.prop, width: 10, anchor: "start" },
    { title: words.room, width: 22, anchor: "start" },
    { title: words.x, width: 13.5, anchor: "end" },
    { title: words.y, width: 13.5, anchor: "end" },
    { title: words.area, width: 10, anchor: "end" },
    { title: words.load, width: 17, anchor: "end" },
    { title: words.used, width: 11, anchor: "end" },
    { title: words.verdict, width: 37, anchor: "start" },
  ];
  return table({ heading: words.props, continued: words.continued, columns, rows });
}

function verdict(check: Check | undefined, words: SoffitPlanWords): string {
  switch (check?.status) {
    case "within":
      return words.within;
    case "over":
      return words.over;
    case "not-applicable":
      return words.noSlab;
    default:
      return words.notChecked;
  }
}
