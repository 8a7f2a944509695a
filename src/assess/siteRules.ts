// What the list before the pour asks beside the pieces: widths taken for one another, joints that grow, pins and services,
// the datum, and who carries how much.

import type { UnitFill } from "../fill/result.ts";
import { distanceToPath } from "../geom/path.ts";
import { ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import { roundTo } from "../units.ts";
import type { CheckedEntry } from "./entry.ts";
import { input } from "./judging.ts";
import { pointOn } from "./openingPlaces.ts";
import { SAME_PLACE, wallSides } from "./wallSides.ts";
import { type Finding, kitFigure, nothingToCheck, unknownHere, type WholeRule } from "./wholeRule.ts";

/** Nearer to one another two widths are taken for one another, mm. Common practice, no source. */
const LEAST_DIFFERENCE: Mm = 30;
/** What a joint adds with dirt and paint, mm: 0.3 to 0.5. Common practice, no source. */
const GROWTH: Mm = 0.4;
/** Layout pins stand so far apart, mm. Common practice, no source. */
const PIN_PITCH: Mm = 600;
/** Minutes to set, strike, clean and pass on a piece, and for a tie. Common practice, no source; a guess to be calibrated. */
const MINUTES_PIECE = 10;
const MINUTES_TIE = 0.7;

export const SITE_RULES: readonly WholeRule[] = [
  {
    kind: "near-widths",
    rule: `no two widths of panels on the walls less than ${LEAST_DIFFERENCE} mm apart`,
    unit: "pairs",
    find: nearWidths,
  },
  {
    kind: "joint-growth",
    rule: `expected growth of the face with the most joints, ${GROWTH} mm a joint`,
    unit: "mm",
    find: growth,
  },
  {
    kind: "joint-drift",
    rule: `the two faces of a wall have as many joints: ${GROWTH} mm for each more is no more than the kit's rule tieTolerance`,
    find: drift,
    inputs: ({ kit }) =>
      kitFigure(
        "greatest offset of a tie from its joint (tieTolerance)",
        ruleValue(kit, "tieTolerance"),
        "mm",
      ),
  },
  {
    kind: "pins-off-services",
    rule: `no stretch of a face longer than ${PIN_PITCH} mm lies in the clearance of services: a layout pin finds its place`,
    find: pinsOnServices,
  },
  {
    kind: "datum",
    rule: "two control lines across one another give the datum of setting out",
    find: datum,
  },
  {
    kind: "crew-balance",
    rule: `greatest work of a room over the mean of the rooms ≤ 1.15; ${MINUTES_PIECE} min a piece, ${MINUTES_TIE} min a tie`,
    unit: "",
    find: crewBalance,
    inputs: () => [input("", "greatest over mean", 1.15)],
  },
];

function nearWidths({ fill }: CheckedEntry): Finding {
  const widths = new Set(
    fill.faces.flatMap(({ pieces }) =>
      pieces.filter(({ family }) => family === "wall-panel").map(({ width }) => width),
    ),
  );
  const sorted = [...widths].sort((a, b) => a - b);
  const near = sorted.slice(1).flatMap((width, k) => {
    const before = sorted[k]!;
    return width - before < LEAST_DIFFERENCE ? [`${before}/${width} mm`] : [];
  });
  if (near.length === 0) return [];
  return unknownHere(`${near.join(", ")}: mark them so that nobody takes one for the other`, near.length);
}

/** Vertical joints of a face at a height. */
function jointCount(pieces: UnitFill["faces"][number]["pieces"], z: Mm, from: Mm, to: Mm): number {
  return pieces.filter(
    (piece) =>
      piece.z < z && z < piece.z + piece.height && piece.x > from + SAME_PLACE && piece.x < to - SAME_PLACE,
  ).length;
}

// Over the foot of the panels, where no band ends.
const LOW: Mm = 100;

function growth({ fill }: CheckedEntry): Finding {
  const most = fill.faces.reduce<{ readonly id: string; readonly joints: number }>(
    (worst, { id, pieces, length }) => {
      const joints = jointCount(pieces, LOW, 0, length);
      return joints > worst.joints ? { id, joints } : worst;
    },
    { id: "", joints: 0 },
  );
  if (most.joints === 0) return nothingToCheck("no face has a joint");
  return unknownHere(
    `face ${most.id} has ${most.joints} joints: measure from the datum end and take what it has grown off the last filler`,
    roundTo(most.joints * GROWTH, 3),
  );
}

function drift({ fill, kit }: CheckedEntry): Finding {
  const tolerance = ruleValue(kit, "tieTolerance");
  if (tolerance === undefined)
    return unknownHere("the kit does not say how far ties may lie beside a joint (rule tieTolerance)");
  const sides = wallSides(fill.faces);
  if (sides.length === 0) return nothingToCheck("no wall has two faces opposite one another");
  return sides.flatMap(({ a, b, from, to, across }) => {
    const mine = jointCount(a.pieces, LOW, from, to);
    const theirs = jointCount(b.pieces, LOW, across(to), across(from));
    const more = Math.abs(mine - theirs);
    return more * GROWTH <= tolerance ? [] : [`faces ${a.id} and ${b.id}: ${mine} and ${theirs} joints`];
  });
}

const STEP: Mm = 50;

function pinsOnServices({ fill, plan }: CheckedEntry): Finding {
  if (plan.services.length === 0) return nothingToCheck("the unit has no services drawn");
  return fill.faces.flatMap((face) => {
    const longest = longestStretch(face.length, (x) => {
      const at = pointOn(face, x);
      return plan.services.some(({ path, clearance }) => distanceToPath(at, path) < clearance);
    });
    return longest > PIN_PITCH ? [`face ${face.id}, ${longest} mm`] : [];
  });
}

function longestStretch(length: Mm, isTaken: (x: Mm) => boolean): Mm {
  let [longest, run] = [0, 0];
  for (let x = 0; x <= length; x += STEP) {
    run = isTaken(x) ? run + STEP : 0;
    longest = Math.max(longest, run);
  }
  return Math.min(longest, length);
}

function datum({ plan }: CheckedEntry): Finding {
  const across = plan.controlLines.some((a, k) =>
    plan.controlLines.slice(k + 1).some((b) => {
      const [ux, uy] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
      const [vx, vy] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
      const sine = Math.abs(ux * vy - uy * vx);
      return sine > 0.1 * Math.sqrt((ux * ux + uy * uy) * (vx * vx + vy * vy));
    }),
  );
  if (across) return [];
  return unknownHere(
    "the unit has no two control lines across one another: its setting-out sheet reads from the least corner, which somebody has to tie to the site",
  );
}

function crewBalance({ fill }: CheckedEntry): Finding {
  const rooms = new Map<string, number>();
  const roomOf = new Map(fill.faces.map(({ id, room }) => [id, room]));
  const add = (room: string | null | undefined, minutes: number) => {
    if (typeof room === "string") rooms.set(room, (rooms.get(room) ?? 0) + minutes);
  };
  for (const { room, pieces } of fill.faces) add(room, pieces.length * MINUTES_PIECE);
  for (const { room, pieces } of fill.soffits) add(room, pieces.length * MINUTES_PIECE);
  for (const { faces, heights } of fill.ties) add(roomOf.get(faces[0]), heights.length * MINUTES_TIE);
  // Where nothing could be placed there is no work to share.
  const loads = [...rooms.values()].filter((minutes) => minutes > 0);
  if (loads.length < 2) return nothingToCheck("the unit has fewer than two rooms to share out");
  const mean = loads.reduce((sum, each) => sum + each, 0) / loads.length;
  return unknownHere(
    "a project does not say who works in which room; the value takes one person a room",
    Math.max(...loads) / mean,
  );
}
