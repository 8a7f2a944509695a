// What a line of the list says: what it is of, and where.

import type { CheckedUnit, CheckRow } from "./checkList.ts";
import type { Line } from "./gather.ts";
import type { CheckSpeech } from "./useCheckWords.ts";

export interface LineText {
  readonly title: string;
  readonly place: string;
}

export function lineText(
  { about, rows, level }: Line,
  speech: CheckSpeech,
  units: readonly CheckedUnit[],
): LineText {
  const { w, kind } = speech;
  const [first] = rows;
  const isMany = units.length > 1;
  switch (about.kind) {
    case "group": {
      const unit = units.find(({ name }) => name === about.group.unit);
      const place = rows.length === 1 && first !== undefined ? placeText(first, speech) : "";
      const name = about.group.unit === "" ? w("all-pours") : about.group.unit;
      const label = isMany ? (unit?.label ?? name) : "";
      return {
        title: kind(about.group.kind),
        place: [label, place].filter((part) => part !== "").join(", "),
      };
    }
    case "wall":
      return { title: w("wall-line", { walls: about.walls }), place: roomsOf(rows) };
    case "room":
      return { title: about.room, place: "" };
    case "check":
      if (first === undefined) return { title: "", place: "" };
      // Under a wall or a room the line above says where.
      return named(
        checkText(level === 3 ? { where: { ...first.where, face: "" }, walls: "" } : first, speech),
        w("whole-unit"),
      );
    default:
      return about satisfies never;
  }
}

/** A check of a whole unit has no place in it, but a line of its own beside those that have. */
function named(text: LineText, whole: string): LineText {
  return text.title === "" ? { ...text, title: whole } : text;
}

/** What is told of a place: walls stand for the face, whose name is the fill's own. */
type Placed = Pick<CheckRow, "where" | "walls">;

/** Where a check is, in words. */
export function placeText(row: Placed, speech: CheckSpeech): string {
  const { title, place } = checkText(row, speech);
  return [title, place].filter((part) => part !== "").join(", ");
}

function checkText({ where, walls }: Placed, { w }: CheckSpeech): LineText {
  const { code, room, piece, opening = "", face = "", z, at } = where;
  const parts = [
    code,
    piece === code ? "" : piece,
    opening === "" ? "" : w("opening", { opening }),
    room,
    walls !== "" ? w("wall", { walls }) : face === "" ? "" : w("face", { face }),
    z === undefined ? "" : w("up-by", { z }),
    at === null ? "" : w("at", { x: Math.round(at[0]), y: Math.round(at[1]) }),
  ].filter((part) => part !== "");
  const [title = "", ...place] = parts;
  return { title, place: place.join(", ") };
}

function roomsOf(rows: readonly CheckRow[]): string {
  return [...new Set(rows.map(({ where }) => where.room).filter((room) => room !== ""))].join(", ");
}
