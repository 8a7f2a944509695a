// The striking order as a picture: the room from above, the number of each step where its first piece comes out, arrows
// the way it goes on.

import { distance } from "../../geom/point.ts";
import { type Box, boxAround, grown } from "../box.ts";
import type { SheetRing } from "../faceOrder.ts";
import type { SheetInfo } from "../info.ts";
import { wallMarks } from "../keyPlan.ts";
import { textWidth } from "../lettering.ts";
import type { Mark, Point } from "../mark.ts";
import type { NoteBlock } from "../notes.ts";
import { type Occupied, occupied } from "../occupied.ts";
import { FINE } from "../pieceMark.ts";
import { boundsOfPlan, intoConcrete, onPlan, type PlanView, planView } from "../planView.ts";
import { numberMarks } from "./strikeBlocks.ts";
import type { StrikeStep } from "./strikeOrder.ts";

/** Greatest height, mm of paper. */
const HEIGHT = 54;
/** Paper round the plan for numbers of faces seen from outside. */
const BORDER = 8;
/** Side of the square that a number takes. */
const NUMBER = 5.4;
/** Between a face and the arrows on it. */
const AWAY = 1.7;
const LETTER = { height: 3.5, weight: 700 } as const;

export function strikePicture(
  rings: readonly SheetRing[],
  steps: readonly StrikeStep[],
  info: SheetInfo,
  width: number,
): NoteBlock | null {
  const faces = rings.flatMap((ring) => ring.faces.map(({ face }) => face));
  if (faces.length === 0) return null;
  const bounds = boundsOfPlan(faces.flatMap(({ from, to }) => [from, to]));
  const scale = Math.max(
    (bounds.right - bounds.left) / (width - 2 * BORDER),
    (bounds.high - bounds.low) / (HEIGHT - 2 * BORDER),
    1000 / width,
  );
  const height = (bounds.high - bounds.low) / scale + 2 * BORDER;
  const area: Box = { x: 0, y: 0, width, height };
  const view = planView(bounds, scale, area);
  const taken = occupied(area);
  for (const { from, to } of faces) taken.takeLine(view.at(from), view.at(to), 1.4);
  const marks: Mark[] = [...wallMarks(rings, view.at, info)];
  steps.forEach((step, index) => {
    if (step.kind === "face") marks.push(...faceStep(step, `${index + 1}`, view, taken));
    if (step.kind === "corners") marks.push(...cornerStep(rings, `${index + 1}`, view, taken));
  });
  for (const { face, letter } of rings.flatMap((ring) => ring.faces)) {
    const [nx, ny] = intoConcrete(face);
    const [x, y] = view.at(onPlan(face, face.length / 2, 0));
    const size = { width: textWidth(letter, LETTER), height: LETTER.height };
    const at: Point = [x + nx * (3.6 + size.width / 2), y - ny * (3.6 + size.height / 2)];
    const box = boxAround(at[0], at[1], size.width, size.height);
    if (!taken.isFree(box)) continue;
    taken.take(grown(box, 0.3));
    const place = [at[0], at[1] + size.height / 2] as const;
    marks.push({ kind: "text", at: place, text: letter, ...LETTER, ink: "ink", anchor: "middle" });
  }
  return { marks, height: height + 1 };
}

/** The number at the first piece, on the person's side; arrows from there to the ends of the face where they have paper. */
function faceStep(
  { face: { face }, pieces }: Extract<StrikeStep, { kind: "face" }>,
  text: string,
  view: PlanView,
  taken: Occupied,
): readonly Mark[] {
  const first = face.pieces.find(({ piece }) => piece === pieces[0]);
  if (first === undefined) return [];
  const x = first.x + first.width / 2;
  const near = AWAY + 0.6 + NUMBER / 2;
  // Beside the piece, else as little along the face and away from it as must be.
  const place = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6, 8, -8]
    .map((along) => x + along * view.scale)
    .filter((at) => at >= 0 && at <= face.length)
    .flatMap((at) => [0, 2].map((away) => onPlan(face, at, -(near + away) * view.scale)))
    .map(view.at)
    .find((at) => taken.isFree(around(at)));
  const arrows = [0, face.length].flatMap((end): readonly Mark[] => {
    const [from, to] = [x, end + (end === 0 ? 1 : -1) * 1.5 * view.scale].map((at) =>
      view.at(onPlan(face, at, -AWAY * view.scale)),
    ) as [Point, Point];
    const isForward = end === 0 ? x > 4 * view.scale : face.length - x > 4 * view.scale;
    return isForward ? arrow(from, to) : [];
  });
  if (place === undefined) return arrows;
  taken.take(around(place));
  return [...arrows, ...numberMarks(text, place[1], place[0])];
}

/** The number in every inside corner that has paper for it, with its arrow out into the room. */
function cornerStep(
  rings: readonly SheetRing[],
  text: string,
  view: PlanView,
  taken: Occupied,
): readonly Mark[] {
  return rings.flatMap((ring) =>
    ring.faces.flatMap(({ face }, index): readonly Mark[] => {
      const before = ring.faces[(index + ring.faces.length - 1) % ring.faces.length]!.face;
      if (ring.corners[index]?.turn !== "inside") return [];
      const [ax, ay] = intoConcrete(before);
      const [bx, by] = intoConcrete(face);
      const [x, y] = view.at(face.from);
      const away = AWAY + NUMBER / 2;
      const at: Point = [x - (ax + bx) * away, y + (ay + by) * away];
      if (!taken.isFree(around(at))) return [];
      taken.take(around(at));
      return numberMarks(text, at[1], at[0]);
    }),
  );
}

function around([x, y]: Point): Box {
  return { x: x - NUMBER / 2, y: y - NUMBER / 2, width: NUMBER, height: NUMBER };
}

function arrow(from: Point, to: Point): readonly Mark[] {
  const size = distance(from, to);
  const [ux, uy] = [(to[0] - from[0]) / size, (to[1] - from[1]) / size];
  const neck: Point = [to[0] - ux * 1.5, to[1] - uy * 1.5];
  const points: readonly Point[] = [
    to,
    [neck[0] - uy * 0.75, neck[1] + ux * 0.75],
    [neck[0] + uy * 0.75, neck[1] - ux * 0.75],
  ];
  return [
    { kind: "line", from, to: neck, stroke: FINE },
    { kind: "polygon", points, fill: "ink" },
  ];
}
