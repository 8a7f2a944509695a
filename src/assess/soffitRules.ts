// Is each soffit tiled, does each slab panel rest on two edges at least, and do props stand over props?

import type { Soffit, SoffitPiece } from "../fill/result.ts";
import { alongLine, asideOfLine, lineThrough } from "../geom/line.ts";
import { ringArea, ringBox } from "../geom/ring.ts";
import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { CheckedEntry } from "./entry.ts";
import { type Finding, nothingToCheck, type WholeRule } from "./wholeRule.ts";

export const SOFFIT_RULES: readonly WholeRule[] = [
  {
    kind: "soffits-tiled",
    rule: "slab panels, strips, connectors and open places make up each soffit, none over another",
    find: ({ fill }) =>
      formed(fill.soffits).length === 0
        ? nothingToCheck("the fill has no soffit with pieces")
        : formed(fill.soffits)
            .filter((soffit) => !isTiled(soffit))
            .map(({ room }) => `soffit of ${room}`),
  },
  {
    kind: "slab-panels-held",
    rule: "each slab panel has two edges at least on strips or connectors",
    find: unheldPanels,
  },
];

function formed(soffits: readonly Soffit[]): readonly Soffit[] {
  return soffits.filter(({ pieces }) => pieces.length > 0);
}

/** mm²: places off the axes are kept to a thousandth. */
const NO_AREA = 2000;
const SAME: Mm = 1;

function isTiled({ outline, holes, pieces, unfilled }: Soffit): boolean {
  const area = (rings: readonly (readonly Position[])[]) =>
    rings.reduce((sum, ring) => sum + Math.abs(ringArea(ring)), 0);
  const whole = area([outline]) - area(holes);
  const parts = [...pieces, ...unfilled].map((part) => part.outline);
  if (Math.abs(whole - area(parts)) > NO_AREA) return false;
  const boxes = pieces
    .filter(({ outline: ring }) => isAlongAxes(ring))
    .map((piece) => ringBox(piece.outline));
  return !boxes.some((a, k) =>
    boxes
      .slice(k + 1)
      .some(
        (b) =>
          Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX) > SAME &&
          Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY) > SAME,
      ),
  );
}

function isAlongAxes(ring: readonly Position[]): boolean {
  return (
    ring.length === 4 &&
    ring.every((point, k) => {
      const next = ring[(k + 1) % ring.length]!;
      return Math.abs(point[0] - next[0]) < SAME || Math.abs(point[1] - next[1]) < SAME;
    })
  );
}

const HOLDS: readonly SoffitPiece["family"][] = ["shoring-strip", "wall-slab-connector", "connector-corner"];
/** So much of an edge has to lie on what holds it. */
const HELD_PART = 0.5;

function unheldPanels({ fill }: CheckedEntry): Finding {
  const panels = fill.soffits.flatMap((soffit) =>
    soffit.pieces.filter(({ family }) => family === "slab-panel").map((panel) => ({ soffit, panel })),
  );
  if (panels.length === 0) return nothingToCheck("the fill has no slab panels");
  const edges = new Map<Soffit, readonly Edge[]>();
  const holding = (soffit: Soffit) => {
    const known = edges.get(soffit) ?? holdingEdges(soffit);
    edges.set(soffit, known);
    return known;
  };
  return panels
    .filter(({ soffit, panel }) => heldEdges(panel, holding(soffit)) < 2)
    .map(({ soffit, panel }) => `slab panel ${panel.piece} under ${soffit.room}`);
}

// A closure between panel and strip is pinned through with both: it counts with what it lies along.
function holdingEdges({ pieces }: Soffit): readonly Edge[] {
  const edgesOfAll = (families: readonly SoffitPiece["family"][]) =>
    pieces.filter(({ family }) => families.includes(family)).map(({ outline }) => edgesOf(outline));
  const holding = edgesOfAll(HOLDS).flat();
  const closures = edgesOfAll(["closure-strip"]).filter((ring) => ring.some((edge) => isHeld(edge, holding)));
  return [...holding, ...closures.flat()];
}

type Edge = readonly [from: Position, to: Position];

function edgesOf(ring: readonly Position[]): readonly Edge[] {
  return ring.map((point, k): Edge => [point, ring[(k + 1) % ring.length]!]);
}

function heldEdges(panel: SoffitPiece, holding: readonly Edge[]): number {
  return edgesOf(panel.outline).filter((edge) => isHeld(edge, holding)).length;
}

function isHeld(edge: Edge, holding: readonly Edge[]): boolean {
  const length = lengthOf(edge);
  return length > 0 && holding.reduce((sum, each) => sum + shared(edge, each), 0) >= HELD_PART * length;
}

function lengthOf([a, b]: Edge): Mm {
  return Math.sqrt((b[0] - a[0]) * (b[0] - a[0]) + (b[1] - a[1]) * (b[1] - a[1]));
}

/** How much of an edge lies on another one. */
function shared([a, b]: Edge, [c, d]: Edge): Mm {
  const line = lineThrough(a, b);
  if (Math.abs(asideOfLine(line, c)) > SAME || Math.abs(asideOfLine(line, d)) > SAME) return 0;
  const [u, v] = [alongLine(line, c), alongLine(line, d)];
  return Math.max(0, Math.min(lengthOf([a, b]), Math.max(u, v)) - Math.max(0, Math.min(u, v)));
}
