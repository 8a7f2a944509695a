// Is everything there that the plan calls for? Counts of faults, none of which is allowed, re-derived from the fill.

import type { FaceOpening, FilledFace, UnitFill } from "../fill/result.ts";
import { alongLine, lineThrough } from "../geom/line.ts";
import { ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { Check } from "./checkDocument.ts";
import { CORNER_RULES } from "./cornerRules.ts";
import { countedPieces } from "./countedPieces.ts";
import type { CheckedEntry } from "./entry.ts";
import { faceRuns } from "./faceRuns.ts";
import { FITTING_RULES } from "./fittingRules.ts";
import { SITE_RULES } from "./siteRules.ts";
import { SOFFIT_RULES } from "./soffitRules.ts";
import { STACK_RULES } from "./stackRules.ts";
import { TIE_RULES } from "./tieRules.ts";
import { kitFigure, ruleCheck, type WholeRule } from "./wholeRule.ts";

/** What these checks take for granted. */
export const WHOLE_ASSUMPTIONS: readonly string[] = [
  "Completeness goes by what the fill lists; what nobody drew, such as services without a path, is not missed.",
];

/** The lowest tie is no higher than this, mm. Common practice, no source. */
const LOWEST_ROW: Mm = 200;

const OWN_RULES: readonly WholeRule[] = [
  { kind: "nothing-open", rule: "no place of a face or a soffit is without a piece", find: openPlaces },
  {
    kind: "ties-in-joints",
    rule: "each tie stands in a joint of both of its faces, 2.5 mm at most beside it",
    find: offJoint,
  },
  {
    kind: "lowest-ties",
    rule: `the lowest tie of a line from the floor is at most ${LOWEST_ROW} mm up`,
    find: highFeet,
  },
  {
    kind: "ties-clear",
    rule: "no tie in an opening or nearer to it than the kit's rule tieEdge",
    find: tiesAtOpenings,
    inputs: ({ kit }) =>
      kitFigure("least distance from an opening (tieEdge)", ruleValue(kit, "tieEdge"), "mm"),
  },
  { kind: "ties-single", rule: "no two ties at one place", find: doubleTies },
  {
    kind: "opening-kits",
    rule: "each opening between jambs has jambs, a head and, off the floor, a sill",
    find: bareOpenings,
  },
  { kind: "closures-explained", rule: "each closure says why it is there", find: unexplained },
  { kind: "first-out", rule: "no ring of panels is locked", find: lockedRings },
  {
    kind: "bill-counts",
    rule: "the bill counts what faces, reveals, corners, soffits, ties and fittings list",
    find: wrongBill,
  },
];

const RULES: readonly WholeRule[] = [
  ...STACK_RULES,
  ...CORNER_RULES,
  ...OWN_RULES,
  ...TIE_RULES,
  ...FITTING_RULES,
  ...SOFFIT_RULES,
  ...SITE_RULES,
];

/** One check a rule. */
export function wholeChecks(entry: CheckedEntry): readonly Check[] {
  if (entry.fill.faces.length === 0) return [];
  return RULES.map((rule) => ruleCheck(entry, rule));
}

function openPlaces({ fill }: CheckedEntry): readonly string[] {
  return [
    ...fill.faces.flatMap(({ id, unfilled }) =>
      unfilled.map(({ x, z }) => `face ${id} at ${x} mm, ${z} mm up`),
    ),
    ...fill.soffits.flatMap(({ room, unfilled }) => unfilled.map(() => `soffit of ${room}`)),
  ];
}

const OFF_JOINT: Mm = 2.5;

function offJoint({ fill }: CheckedEntry): readonly string[] {
  return faceRuns(fill).flatMap((run) => {
    const pieces = run.faces.flatMap(({ face, start }) =>
      face.pieces.map((piece) => ({ ...piece, low: start + piece.x, high: start + piece.x + piece.width })),
    );
    return run.ties.flatMap(({ place, heights, tie }) => {
      const isJoint = (z: Mm) => {
        const at = pieces.filter((piece) => piece.z < z && z < piece.z + piece.height);
        return (
          at.some(({ high }) => Math.abs(high - place) <= OFF_JOINT) &&
          at.some(({ low }) => Math.abs(low - place) <= OFF_JOINT)
        );
      };
      return heights
        .filter((z) => !isJoint(z))
        .map((z) => `tie ${tie + 1} at ${z} mm on face ${run.faces[0]!.face.id}`);
    });
  });
}

function highFeet({ fill }: CheckedEntry): readonly string[] {
  return fill.ties.flatMap(({ heights, at, faces }, index) => {
    const lowest = heights[0] ?? 0;
    if (lowest <= LOWEST_ROW || hasOpeningUnder(fill, faces, at, lowest)) return [];
    return [`tie ${index + 1} at ${lowest} mm`];
  });
}

// A line of ties over a door begins where the door ends.
function hasOpeningUnder(fill: UnitFill, ids: readonly string[], at: readonly [Mm, Mm], z: Mm): boolean {
  return fill.faces
    .filter(({ id }) => ids.includes(id))
    .some((face) => face.openings.some((o) => o.head <= z && besideOf(face, o, at) <= OFF_JOINT));
}

/** How far a point of the plan is beside an opening of a face, measured along it; negative between its jambs. */
function besideOf(face: FilledFace, { x, width }: FaceOpening, at: readonly [Mm, Mm]): Mm {
  const along = alongLine(lineThrough(face.from, face.to), at);
  return Math.max(x - along, along - x - width);
}

function tiesAtOpenings({ fill, kit }: CheckedEntry): readonly string[] {
  const edge = ruleValue(kit, "tieEdge") ?? 0;
  const faces = new Map(fill.faces.map((face) => [face.id, face]));
  return fill.ties.flatMap(({ heights, at, faces: ids }, index) =>
    heights
      .filter((z) =>
        ids.some((id) => {
          const face = faces.get(id);
          return face?.openings.some((o) =>
            isTooNear({ beside: besideOf(face, o, at), opening: o, z, edge }),
          );
        }),
      )
      .map((z) => `tie ${index + 1} at ${z} mm`),
  );
}

// In the opening a tie is wrong whatever the kit says, or leaves unsaid.
function isTooNear({
  beside,
  opening,
  z,
  edge,
}: {
  readonly beside: Mm;
  readonly opening: FaceOpening;
  readonly z: Mm;
  readonly edge: Mm;
}): boolean {
  const above = Math.max(opening.sill - z, z - opening.head);
  if (beside < -OFF_JOINT && above < 0) return true;
  const [dx, dz] = [Math.max(beside - OFF_JOINT, 0), Math.max(above, 0)];
  // Settling moves a tie by half a millimetre at most.
  return Math.sqrt(dx * dx + dz * dz) < edge - OFF_JOINT - 0.5;
}

function doubleTies({ fill }: CheckedEntry): readonly string[] {
  const seen = new Map<string, number>();
  return fill.ties.flatMap(({ at, heights }, index) =>
    heights.flatMap((z) => {
      const key = `${Math.round(at[0])} ${Math.round(at[1])} ${z}`;
      const before = seen.get(key);
      if (before !== undefined) return [`ties ${before} and ${index + 1} at ${z} mm`];
      seen.set(key, index + 1);
      return [];
    }),
  );
}

function bareOpenings({ fill }: CheckedEntry): readonly string[] {
  const sides = new Set(
    fill.reveals.filter(({ pieces }) => pieces.length > 0).map(({ opening, side }) => `${opening} ${side}`),
  );
  const bands = new Map(
    fill.faces.flatMap(({ openings }) =>
      openings.filter(({ formed }) => formed === "band").map((each) => [each.id, each] as const),
    ),
  );
  return [...bands.values()].flatMap(({ id, sill }) =>
    ["left", "right", "head", ...(sill > 0 ? ["sill"] : [])]
      .filter((side) => !sides.has(`${id} ${side}`))
      .map((side) => `opening ${id} has no ${side}`),
  );
}

function unexplained({ fill }: CheckedEntry): readonly string[] {
  return fill.faces.flatMap(({ id, pieces }) =>
    pieces
      .filter(({ family, reason }) => family === "closure-strip" && (reason ?? "") === "")
      .map(({ piece }) => `${piece} on face ${id}`),
  );
}

function lockedRings({ fill }: CheckedEntry): readonly string[] {
  return fill.problems
    .filter(({ kind, severity }) => kind === "locked-ring" && severity === "error")
    .map(({ where }) => where.room ?? "a ring");
}

function wrongBill({ fill }: CheckedEntry): readonly string[] {
  const counted = countedPieces(fill);
  const billed = new Map(fill.bill.map(({ code, quantity }) => [code, quantity]));
  return [...new Set([...counted.keys(), ...billed.keys()])]
    .filter((code) => (counted.get(code) ?? 0) !== (billed.get(code) ?? 0))
    .map((code) => `${code}: ${counted.get(code) ?? 0} listed, ${billed.get(code) ?? 0} in the bill`);
}
