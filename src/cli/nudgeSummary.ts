// What a person reads on the screen about the moves of walls that would make the set cheaper.

import type { NudgeList, SchemeNudge } from "../fill/nudge/nudgeList.ts";
import { roundTo } from "../units.ts";
import { unitOf } from "./setSummary.ts";

const SHOWN = 5;

/** A line for each of the first moves and one for how the search ended; empty where none were looked for. */
export function nudgeSummary(list: NudgeList | null, currency: string | null): string {
  if (list === null) return "";
  const unit = unitOf(list.countedBy, currency);
  const amount = (value: number) => `${roundTo(value, 2).toFixed(2)}${unit}`;
  const shown = list.nudges.slice(0, SHOWN).map((nudge) => nudgeLine(nudge, amount));
  const more = list.nudges.length - shown.length;
  return [
    endLine(list, amount),
    ...shown,
    ...(more > 0 ? [`… and ${more} more moves, all of them in the list.`] : []),
    "",
  ].join("\n");
}

function endLine(list: NudgeList, amount: (value: number) => string): string {
  const { status, walls, priced, nudges, greatest, mostLeft } = list;
  if (status === "no-plan")
    return "Moves of walls: none looked for, since no plan keeps to the panels there are and to the limits.";
  const found = nudges.length === 0 ? "none saves" : `${nudges.length} save${nudges.length === 1 ? "s" : ""}`;
  const ends = {
    done: "",
    limit: `; the work allowed ran out, and one not tried may save up to ${amount(mostLeft)}`,
    stopped: "; stopped before all were tried",
  };
  return `Moves of one wall by up to ${greatest} mm: ${found}, of ${walls} walls and ends looked at, ${priced} moves solved again${ends[status]}.`;
}

function nudgeLine(nudge: SchemeNudge, amount: (value: number) => string): string {
  const { unit, kind, walls, by, way, saving, rooms } = nudge;
  const what = kind === "free-end" ? `the free end of wall ${walls[0]}` : wallsText(walls);
  const sizes = rooms.map(({ room, sizes: own }) =>
    [room, ...own.map(({ before, after }) => `${before} to ${after}`)].join(" "),
  );
  const clear = sizes.length === 0 ? "" : ` Clear sizes: ${sizes.join("; ")}.`;
  return `  Unit ${unit}: ${what} ${by} mm ${way} saves ${amount(saving)}.${clear}`;
}

function wallsText(walls: readonly string[]): string {
  return `${walls.length === 1 ? "wall" : "walls"} ${walls.join(", ")}`;
}
