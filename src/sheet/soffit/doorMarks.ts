// How a soffit lies in its room: the letters of the faces round it, a mark at each door.

import type { Soffit } from "../../fill/result.ts";
import { type Box, boxAround, contains, grown } from "../box.ts";
import type { SheetRing } from "../faceOrder.ts";
import { textWidth } from "../lettering.ts";
import type { Mark, Point } from "../mark.ts";
import type { Occupied } from "../occupied.ts";
import { OUTLINE } from "../pieceMark.ts";
import { intoConcrete, onPlan, type PlanView } from "../planView.ts";

/** Only round the soffit of a room: a slab outside lies along few of the faces of its building. */
export function doorMarks(
  soffit: Soffit,
  rings: readonly SheetRing[],
  view: PlanView,
  { taken, area }: { readonly taken: Occupied; readonly area: Box },
): readonly Mark[] {
  const ring = rings[0];
  if (soffit.isSlab === true || ring === undefined) return [];
  return ring.faces.flatMap(({ face, letter }): readonly Mark[] => {
    const [nx, ny] = intoConcrete(face);
    const doors = face.openings
      .filter(({ sill }) => sill === 0)
      .flatMap((door): readonly Mark[] => {
        const [x, y] = view.at(onPlan(face, door.x + door.width / 2, 0));
        const [ox, oy] = [nx, -ny];
        const points: readonly Point[] = [
          [x + ox * 0.5, y + oy * 0.5],
          [x + ox * 2.6 - oy * 1.5, y + oy * 2.6 + ox * 1.5],
          [x + ox * 2.6 + oy * 1.5, y + oy * 2.6 - ox * 1.5],
        ];
        // A door may lie off the soffit where the fill is of no real room.
        const isIn = points.every(([px, py]) => contains(area, { x: px, y: py, width: 0, height: 0 }));
        return isIn ? [{ kind: "polygon", points, fill: "ink" }] : [];
      });
    const lettering = { height: 3.5, weight: 400 } as const;
    const width = textWidth(letter, lettering);
    const wishes = [0.5, 0.38, 0.62, 0.25, 0.75, 0.12, 0.88].map((share): Point => {
      const [x, y] = view.at(onPlan(face, face.length * share, 0));
      return [x + nx * (2.2 + width / 2), y - ny * (2.2 + lettering.height / 2)];
    });
    const box = ([x, y]: Point) => boxAround(x, y, width + 2.4, lettering.height + 2);
    const isByDoor = ([x, y]: Point) =>
      face.openings.some((door) => {
        const [dx, dy] = view.at(onPlan(face, door.x + door.width / 2, 0));
        return door.sill === 0 && Math.abs(dx - x) < 4 && Math.abs(dy - y) < 6;
      });
    const at = wishes.find((wish) => !isByDoor(wish) && taken.isFree(box(wish)));
    if (at === undefined) return doors;
    taken.take(grown(box(at), 0.2));
    const text: Mark = {
      kind: "text",
      at: [at[0], at[1] + lettering.height / 2],
      text: letter,
      ...lettering,
      ink: "ink",
      anchor: "middle",
    };
    return [
      ...doors,
      { kind: "circle", centre: at, radius: Math.max(2.3, width / 2 + 0.8), fill: "paper", stroke: OUTLINE },
      text,
    ];
  });
}
