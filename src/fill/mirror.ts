// The fill of a mirrored pour: the unit's fill reflected piece for piece (x → −x), handed pieces swapped. Never a fill
// of its own: the crew has the unit in its hands and finds every piece where its mirror image stood.

import { partnerOf } from "../kit/handed.ts";
import type { Kit } from "../kit/kit.ts";
import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import { compareLines } from "./bill.ts";
import type { FilledFace, Reveal, RevealSide, UnitFill } from "./result.ts";

/** The reflection of a unit's fill. Ids stay, so that a piece and its mirror image go by one name. */
export function mirrorFill(fill: UnitFill, kit: Kit): UnitFill {
  const code = codeSwap(kit);
  const lengths = new Map(fill.faces.map((face) => [face.id, face.length]));
  return {
    ...fill,
    faces: fill.faces.map((face) => mirrorFace(face, code)),
    corners: fill.corners.map((edge) => ({
      ...edge,
      code: code(edge.code),
      from: mirrorPoint(edge.from),
      to: mirrorPoint(edge.to),
    })),
    reveals: fill.reveals.map((reveal) => mirrorReveal(reveal, code)),
    soffits: fill.soffits.map((soffit) => ({
      ...soffit,
      outline: mirrorOutline(soffit.outline),
      holes: soffit.holes.map(mirrorOutline),
      pieces: soffit.pieces.map((piece) => ({
        ...piece,
        code: code(piece.code),
        outline: mirrorOutline(piece.outline),
      })),
      unfilled: soffit.unfilled.map((part) => ({ ...part, outline: mirrorOutline(part.outline) })),
      props: soffit.props.map((prop) => ({ ...prop, code: code(prop.code), at: mirrorPosition(prop.at) })),
    })),
    ties: fill.ties.map((tie) => ({ ...tie, code: code(tie.code), at: mirrorPosition(tie.at) })),
    fittings: fill.fittings.map((fitting) => ({
      ...fitting,
      code: code(fitting.code),
      // A ledger longer than its face begins where the face does, in either hand.
      x: Math.max(0, (lengths.get(fitting.face) ?? 0) - fitting.x - (fitting.length ?? 0)),
    })),
    accessories: fill.accessories.map((count) => ({ ...count, code: code(count.code) })),
    bill: fill.bill.map((line) => ({ ...line, code: code(line.code) })).sort(compareLines),
  };
}

type Swap = (code: string) => string;

/** What takes the place of a code in the mirror. A piece cut to measure keeps its cut: "K-left/325" becomes "K-right/325". */
export function codeSwap(kit: Kit): Swap {
  const swapped = new Map<string, string>();
  for (const piece of kit.pieces) {
    const partner = partnerOf(kit, piece);
    if (partner !== null && partner.code !== piece.code) swapped.set(piece.code, partner.code);
  }
  return (code) => {
    const whole = swapped.get(code);
    if (whole !== undefined || swapped.size === 0) return whole ?? code;
    const stroke = code.lastIndexOf("/");
    const stem = stroke < 0 ? undefined : swapped.get(code.slice(0, stroke));
    return stem === undefined ? code : stem + code.slice(stroke);
  };
}

/** The reflection of one face. Without a swap its pieces keep their codes. */
export function mirrorFace(face: FilledFace, code: Swap = (same) => same): FilledFace {
  const turned = (x: Mm, width: Mm) => face.length - x - width;
  return {
    ...face,
    // Concrete stays on the left: the reflected face is walked the other way.
    from: mirrorPosition(face.to),
    to: mirrorPosition(face.from),
    settled: [mirrorPosition(face.settled[1]), mirrorPosition(face.settled[0])],
    openings: face.openings
      .map((opening) => ({ ...opening, x: turned(opening.x, opening.width) }))
      .sort((a, b) => a.x - b.x || a.sill - b.sill),
    pieces: face.pieces
      .map((piece) => ({ ...piece, code: code(piece.code), x: turned(piece.x, piece.width) }))
      .sort((a, b) => a.x - b.x || a.z - b.z),
    unfilled: face.unfilled
      .map((part) => ({ ...part, x: turned(part.x, part.width) }))
      .sort((a, b) => a.x - b.x || a.z - b.z),
  };
}

const OTHER_SIDE: Readonly<Record<RevealSide, RevealSide>> = {
  left: "right",
  right: "left",
  head: "head",
  sill: "sill",
};

function mirrorReveal(reveal: Reveal, code: Swap): Reveal {
  const isLevel = reveal.side === "head" || reveal.side === "sill";
  const end = reveal.pieces.reduce((most, piece) => Math.max(most, piece.at + piece.length), 0);
  const start = reveal.pieces.reduce((least, piece) => Math.min(least, piece.at), end);
  return {
    ...reveal,
    side: OTHER_SIDE[reveal.side],
    pieces: reveal.pieces.map((piece) => ({
      ...piece,
      code: code(piece.code),
      at: isLevel ? start + end - piece.at - piece.length : piece.at,
    })),
  };
}

export function mirrorPosition([x, y]: Position): Position {
  return [x === 0 ? 0 : -x, y];
}

function mirrorPoint([x, y, z]: readonly [Mm, Mm, Mm]): readonly [Mm, Mm, Mm] {
  return [x === 0 ? 0 : -x, y, z];
}

function mirrorOutline(outline: readonly Position[]): readonly Position[] {
  return outline.map(mirrorPosition).reverse();
}
