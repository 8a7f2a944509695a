// Is a tie wherever one belongs, and none where none may be: in openings, joining walls and services?

import type { FilledFace, TieLine, UnitFill } from "../fill/result.ts";
import { alongLine, asideOfLine } from "../geom/line.ts";
import { distanceToPath } from "../geom/path.ts";
import { ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { CheckedEntry } from "./entry.ts";
import { input } from "./judging.ts";
import { lineOf, piecesAt, SAME_PLACE, type WallSides, wallSides } from "./wallSides.ts";
import { type Finding, kitFigure, nothingToCheck, unknownHere, type WholeRule } from "./wholeRule.ts";

export const TIE_RULES: readonly WholeRule[] = [
  {
    kind: "ties-complete",
    rule: "a tie in every row of every joint that both faces of a wall share, but within tieEdge of an opening and on the closing side of a closure",
    find: missingTies,
    inputs: ({ kit }) =>
      kitFigure("least distance from an opening (tieEdge)", ruleValue(kit, "tieEdge"), "mm"),
  },
  {
    kind: "ties-on-faces",
    rule: "each tie goes through one wall: both of its ends lie on its faces, none in a joining wall",
    find: ({ fill }) => (fill.ties.length === 0 ? nothingToCheck("the fill has no ties") : offFaces(fill)),
  },
  {
    kind: "ties-on-holes",
    rule: "each tie is on a hole of the kit's pattern up the panel's edge (holes)",
    find: offHoles,
    inputs: ({ kit }) => {
      const holes = ruleValue(kit, "holes");
      return holes === undefined
        ? []
        : [input("", "first hole", holes.first, "mm"), input("", "pitch of the holes", holes.pitch, "mm")];
    },
  },
  {
    kind: "ties-one-owner",
    rule: "all ties between two faces are hung from the one that is set first",
    find: ({ fill }) => (fill.ties.length === 0 ? nothingToCheck("the fill has no ties") : twoOwners(fill)),
  },
  {
    kind: "ties-off-services",
    rule: "no tie within the clearance of a service",
    find: tiesOnServices,
  },
  {
    kind: "ties-off-movement-joints",
    rule: "no tie crosses a movement joint",
    find: () =>
      unknownHere(
        "a project has no member for movement joints: where two walls stand beside one, see that no tie crosses it",
      ),
  },
];

function missingTies({ fill, kit }: CheckedEntry): Finding {
  const rows = ruleValue(kit, "tieRows");
  if (rows === undefined) return unknownHere("the kit gives no rows of ties (rule tieRows)");
  const sides = wallSides(fill.faces);
  if (sides.length === 0) return nothingToCheck("no wall has two faces opposite one another");
  const edge = ruleValue(kit, "tieEdge") ?? 0;
  const placed = tiesByFace(fill);
  return sides.flatMap((pair) =>
    jointsIn(pair).flatMap((x) => {
      const lacking = rows.filter(
        (z) =>
          isShared(pair, x, z) &&
          !sameJoint(pair, x, z).some(
            (place) => isNearOpening(pair, { x: place, z, edge }) || isTied(pair, { x: place, z, placed }),
          ),
      );
      return lacking.length === 0
        ? []
        : [`face ${pair.a.id} at ${Math.round(x)} mm, ${lacking.join(", ")} mm up`];
    }),
  );
}

function jointsIn({ a, from, to }: WallSides): readonly Mm[] {
  const places = new Set(a.pieces.map(({ x }) => x));
  return [...places]
    .filter((x) => x > from + SAME_PLACE && x < to - SAME_PLACE)
    .sort((one, other) => one - other);
}

function isShared({ a, b, across }: WallSides, x: Mm, z: Mm): boolean {
  const [one, other] = [piecesAt(a, x, z), piecesAt(b, across(x), z)];
  return [one.before, one.behind, other.before, other.behind].every((piece) => piece !== undefined);
}

function isNearOpening(
  { a, b, across }: WallSides,
  { x, z, edge }: { readonly x: Mm; readonly z: Mm; readonly edge: Mm },
): boolean {
  const near = (face: FilledFace, place: Mm) =>
    face.openings.some((o) => {
      const dx = Math.max(o.x - place, 0, place - o.x - o.width);
      const dz = Math.max(o.sill - z, 0, z - o.head);
      return Math.sqrt(dx * dx + dz * dz) < edge + SAME_PLACE;
    });
  return near(a, x) || near(b, across(x));
}

function isTied(
  { a }: WallSides,
  { x, z, placed }: { readonly x: Mm; readonly z: Mm; readonly placed: TiesByFace },
): boolean {
  return (placed.get(a.id) ?? []).some((tie) => Math.abs(tie.x - x) <= SAME_PLACE && tie.heights.includes(z));
}

type TiesByFace = ReadonlyMap<string, readonly { readonly x: Mm; readonly heights: readonly Mm[] }[]>;

function tiesByFace({ faces, ties }: UnitFill): TiesByFace {
  const lines = new Map(faces.filter(({ length }) => length > 0).map((face) => [face.id, lineOf(face)]));
  const found = new Map<string, { x: Mm; heights: readonly Mm[] }[]>();
  for (const { at, heights, faces: ids } of ties) {
    for (const id of ids) {
      const line = lines.get(id);
      if (line === undefined) continue;
      found.set(id, [...(found.get(id) ?? []), { x: alongLine(line, at), heights }]);
    }
  }
  return found;
}

/** The places that count as the joint at `x`: a closure is one joint with both of its sides. */
function sameJoint({ a, b, across }: WallSides, x: Mm, z: Mm): readonly Mm[] {
  const [mine, theirs] = [piecesAt(a, x, z), piecesAt(b, across(x), z)];
  return [
    x,
    ...closureWidth(mine.before).map((width) => x - width),
    ...closureWidth(mine.behind).map((width) => x + width),
    // On the face opposite, what ends here as that face is walked lies the other way.
    ...closureWidth(theirs.behind).map((width) => x - width),
    ...closureWidth(theirs.before).map((width) => x + width),
  ];
}

function closureWidth(piece: { readonly family: string; readonly width: Mm } | undefined): readonly Mm[] {
  return piece?.family === "closure-strip" ? [piece.width] : [];
}

function offFaces({ faces, ties }: UnitFill): readonly string[] {
  const known = new Map(faces.map((face) => [face.id, face]));
  return ties.flatMap((tie, index) => {
    const off = tie.faces.filter((id) => {
      const face = known.get(id);
      return face === undefined || !isOnFace(face, tie);
    });
    return off.map((id) => `tie ${index + 1} is not on face ${id}`);
  });
}

function isOnFace(face: FilledFace, { at, length }: TieLine): boolean {
  if (face.length === 0) return false;
  const line = lineOf(face);
  const [x, aside] = [alongLine(line, at), asideOfLine(line, at)];
  return x >= -SAME_PLACE && x <= face.length + SAME_PLACE && Math.abs(aside - length / 2) <= SAME_PLACE;
}

function offHoles({ fill, kit }: CheckedEntry): Finding {
  const holes = ruleValue(kit, "holes");
  if (holes === undefined)
    return unknownHere("the kit does not say where its panels have holes (rule holes)");
  if (fill.ties.length === 0) return nothingToCheck("the fill has no ties");
  const heights = new Set(fill.ties.flatMap((tie) => tie.heights));
  return [...heights]
    .filter((z) => z < holes.first || (z - holes.first) % holes.pitch !== 0)
    .sort((a, b) => a - b)
    .map((z) => `the row at ${z} mm`);
}

function twoOwners({ ties }: UnitFill): readonly string[] {
  const owners = new Set(ties.map(({ faces }) => faces.join(" ")));
  const both = ties.filter(({ faces: [owner, other] }) => owner < other && owners.has(`${other} ${owner}`));
  return [...new Set(both.map(({ faces }) => faces.join(" and ")))].map((faces) => `faces ${faces}`);
}

function tiesOnServices({ fill, plan }: CheckedEntry): Finding {
  if (plan.services.length === 0) return nothingToCheck("the unit has no services drawn");
  return fill.ties.flatMap(({ at }, index) =>
    plan.services
      .filter(({ path, clearance }) => distanceToPath(at, path) < clearance)
      .map(({ id }) => `tie ${index + 1} at service ${id}`),
  );
}
