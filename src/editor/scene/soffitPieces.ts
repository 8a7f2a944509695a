// The soffit of a fill as it lies over the plan: slab panels, strips, closures and connectors as rings, props as places.
//
//   ▒▒▒▒▒▒▒▒▒▒▒▒▒▒▒▒▒▒▒    ▒ connector along the walls
//   ▒┌──────┬──────┬─┐▒
//   ▒│      │      │ │▒    slab panels
//   ▒╞══⊗═══⊗══════⊗═╡▒    strip with its props
//   ▒└──────┴──────┴─┘▒

import RBush from "rbush";
import type { Soffit, SoffitPiece, SoffitProp } from "../../fill/result.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { type Box, boxAround } from "../box.ts";
import type { LiveFill } from "../live/liveFill.ts";

export type SoffitKind = "panel" | "filler" | "closure" | "strip" | "connector" | "unfilled";

/** What lies in the soffit with an outline of its own. */
export interface SoffitShape extends Box {
  /** The piece's id; of what is unfilled one of its own. */
  readonly id: string;
  readonly kind: SoffitKind;
  /** null: what is unfilled. */
  readonly piece: SoffitPiece | null;
  readonly soffit: Soffit;
  readonly outline: readonly Position[];
  /** The shorter and the longer side of a rectangle, mm; null for any other form. */
  readonly size: readonly [short: Mm, long: Mm] | null;
  /** Index of the fill's problem that says why it is unfilled. */
  readonly problem: number | null;
}

export interface ScenePropPlace {
  readonly prop: SoffitProp;
  readonly soffit: Soffit;
}

export interface SceneSoffit {
  readonly shapes: readonly SoffitShape[];
  readonly index: RBush<SoffitShape>;
  readonly props: readonly ScenePropPlace[];
}

const known = new WeakMap<LiveFill, SceneSoffit>();

/** The soffit of a fill, worked out once. */
export function sceneSoffit(live: LiveFill): SceneSoffit {
  const found = known.get(live);
  if (found !== undefined) return found;
  const standard = standardCodes(live.kit);
  const { soffits } = live.fill;
  const shapes = soffits.flatMap((soffit) => shapesOf(soffit, standard));
  const index = new RBush<SoffitShape>();
  index.load([...shapes]);
  const props = soffits.flatMap((soffit) => soffit.props.map((prop) => ({ prop, soffit })));
  const made = { shapes, index, props };
  known.set(live, made);
  return made;
}

function standardCodes({ pieces }: Kit): ReadonlySet<string> {
  return new Set(
    pieces.flatMap((piece) => (piece.family === "slab-panel" && piece.standard ? [piece.code] : [])),
  );
}

function shapesOf(soffit: Soffit, standard: ReadonlySet<string>): readonly SoffitShape[] {
  const pieces = soffit.pieces.map((piece): SoffitShape => {
    const { outline } = piece;
    const kind = kindOf(piece, standard);
    return {
      ...boxAround(outline),
      ...{ id: piece.piece, kind, piece, soffit, outline, size: sizeOf(outline), problem: null },
    };
  });
  const voids = soffit.unfilled.map(({ outline, problem }, k): SoffitShape => {
    const id = `${soffit.room}/soffit-void${k + 1}`;
    return {
      ...boxAround(outline),
      ...{ id, kind: "unfilled", piece: null, soffit, outline, size: sizeOf(outline), problem },
    };
  });
  return [...pieces, ...voids];
}

function kindOf({ family, code }: SoffitPiece, standard: ReadonlySet<string>): SoffitKind {
  switch (family) {
    case "slab-panel":
      return standard.has(code) ? "panel" : "filler";
    case "shoring-strip":
      return "strip";
    case "closure-strip":
      return "closure";
    default:
      return "connector";
  }
}

function sizeOf(outline: readonly Position[]): SoffitShape["size"] {
  const [a, b, c] = outline;
  if (outline.length !== 4 || a === undefined || b === undefined || c === undefined) return null;
  const one = Math.round(span(a, b));
  const other = Math.round(span(b, c));
  return one < other ? [one, other] : [other, one];
}

/** How far two places are apart, mm. */
export function span(a: Position, b: Position): Mm {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  return Math.sqrt(dx * dx + dy * dy);
}

/** The middle of a shape's box. */
export function middleOf({ minX, minY, maxX, maxY }: Box): Position {
  return [(minX + maxX) / 2, (minY + maxY) / 2];
}
