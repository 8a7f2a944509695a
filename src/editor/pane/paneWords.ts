// What the elevation says: names of faces, joints and pieces.

import type { FaceJoint, SeenStretch } from "../../fill/stretchPieces.ts";
import { type Speech, say, type Words, words } from "../words/say.ts";
import type { DrawnFace, DrawnPart } from "./elevation.ts";
import type { Focused } from "./paneWalk.ts";

export function faceWords({ face }: DrawnFace): Words {
  const wall = face.walls.join(" + ");
  return face.room === null
    ? words("pane.wall-outside", { wall })
    : words("pane.wall-to-room", { wall, room: face.room });
}

/** What forces a joint; the first of several, which is the one that would have to move. */
export function jointWords({ causes }: FaceJoint): Words {
  const [first] = causes;
  switch (first?.kind) {
    case "leg":
      return words("joint.leg", { wall: first.walls[0] ?? "" });
    case "jamb":
      return words("joint.jamb", { opening: first.opening });
    case "free-end":
      return words("joint.free-end", { wall: first.wall });
    case "end":
      return words("joint.end", { wall: first.walls[0] ?? "" });
    case undefined:
      return words("joint.plain");
    default:
      return first satisfies never;
  }
}

export function partWords({ kind, width, height, isZone, code }: DrawnPart): Words {
  switch (kind) {
    case "panel":
      return words(isZone ? "piece.zone" : "piece.panel", { width, height });
    case "filler":
      return words("piece.filler", { width, height });
    case "closure":
      return words("piece.closure", { width, height });
    case "corner":
      return words("piece.corner", { width, height });
    case "stop-end":
      return words("piece.stop-end", { width, height });
    case "band":
      return words("piece.band", { code, width });
    case "unfilled":
      return words("pane.said-unfilled", { width, height, number: "" });
    default:
      return kind satisfies never;
  }
}

/** One sentence on what the hand is on, for those who hear the page. */
export function focusText(
  { focus, drawn, seen, part }: Focused,
  speech: Speech,
  numbers: readonly number[],
): string {
  const t = (said: Words) => say(speech, said);
  if (focus.level === "tie") {
    const tie = drawn.ties.find(({ x }) => x === focus.x);
    return t(words("pane.said-tie", { x: focus.x, count: tie?.heights.length ?? 0 }));
  }
  if (focus.level === "piece" && part !== null) {
    if (part.kind === "unfilled") {
      const number = numbers[part.problem ?? -1] ?? "";
      return t(words("pane.said-unfilled", { width: part.width, height: part.height, number }));
    }
    return t(words("pane.said-piece", { name: t(partWords(part)), x: part.x }));
  }
  if (focus.level !== "face" && seen !== null) return stretchText(seen, speech);
  return t(words("pane.said-face", { face: t(faceWords(drawn)), length: drawn.face.length }));
}

function stretchText({ isZone, length, left, right, pieces }: SeenStretch, speech: Speech): string {
  const t = (said: Words) => say(speech, said);
  const widths = pieces.map(({ width }) => speech.write(width)).join(" ");
  return isZone
    ? t(words("pane.said-zone", { length, widths }))
    : t(
        words("pane.said-stretch", {
          length,
          widths,
          left: t(jointWords(left)),
          right: t(jointWords(right)),
        }),
      );
}
