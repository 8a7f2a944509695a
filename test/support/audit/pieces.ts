// Is every piece in the fill a piece of the kit, of the size it claims, listed as often as it exists?

import type { EdgePiece, FacePiece, FilledFace, Reveal, UnitFill } from "../../../src/fill/result.ts";
import type { Kit, Piece } from "../../../src/kit/kit.ts";

/** Codes, families and sizes. */
export function sizeFaults(fill: UnitFill, kit: Kit): string[] {
  const faults: string[] = [];
  const check = (what: string, code: string, fits: (piece: Piece, made: number | null) => boolean) => {
    const known = lookUp(kit, code);
    if (known === null) faults.push(`${what}: the kit has no ${code}`);
    else if (!fits(known.piece, known.made)) faults.push(`${what}: ${code} has another family or size`);
  };
  for (const face of fill.faces) {
    for (const one of face.pieces) {
      check(
        `${face.id} ${one.piece}`,
        one.code,
        (piece, made) => piece.family === one.family && isSize(face, one, piece, made),
      );
    }
  }
  for (const one of fill.corners) {
    check(
      `corner ${one.piece}`,
      one.code,
      (piece, made) => piece.family === one.family && isEdge(one, piece, made),
    );
  }
  for (const reveal of fill.reveals) {
    for (const one of reveal.pieces) {
      check(`reveal ${reveal.opening} ${one.piece}`, one.code, (piece, made) => isReveal(one, piece, made));
    }
  }
  for (const tie of fill.ties) {
    check(`tie at ${tie.at}`, tie.code, (piece) => piece.family === "tie" && piece.length === tie.length);
  }
  for (const one of [...fill.fittings, ...fill.accessories]) {
    check(`fitting ${one.code}`, one.code, (piece) => piece.family === one.family);
  }
  return faults;
}

// Made to measure: the code of the kit, a slash and the length.
function lookUp(kit: Kit, code: string): { piece: Piece; made: number | null } | null {
  const plain = kit.pieces.find((piece) => piece.code === code);
  if (plain !== undefined) return { piece: plain, made: null };
  const [, base, length] = /^(.+)\/(\d+)$/.exec(code) ?? [];
  const piece = kit.pieces.find((one) => one.code === base);
  return piece === undefined ? null : { piece, made: Number(length) };
}

function isSize(face: FilledFace, one: FacePiece, piece: Piece, made: number | null): boolean {
  const { width, height } = one;
  switch (piece.family) {
    case "wall-panel": {
      const isUpright = piece.width === width && piece.height === height;
      return made === null && (isUpright || (piece.height === width && piece.width === height));
    }
    case "closure-strip":
      return (made ?? width) === width && width >= piece.least && width <= piece.greatest;
    case "inside-corner":
      return made === null && piece.height === height && isLeg(face, one, piece.legs);
    case "connector-corner":
    case "cap-corner":
      return (
        made === null && piece.turn === "inside" && piece.height === height && isLeg(face, one, piece.legs)
      );
    case "stop-end":
      return piece.width === width && (made ?? piece.height) === height;
    case "wall-slab-connector":
    case "slab-edge-cap":
      return piece.height === height && (made ?? piece.length) === width;
    default:
      return false;
  }
}

// Facing the corner, the left leg stands at the right end of the one face, the right leg at the left end of the next.
function isLeg(face: FilledFace, one: FacePiece, legs: readonly [number, number]): boolean {
  const isLeft = one.x + one.width === face.length && one.width === legs[0];
  const isRight = one.x === 0 && one.width === legs[1];
  return isLeft || isRight;
}

const EDGE_SLACK = 3; // mm: places keep the drawn outline, lengths are settled

function isEdge({ from, to }: EdgePiece, piece: Piece, made: number | null): boolean {
  const [dx, dy, dz] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const span = Math.sqrt(dx * dx + dy * dy + dz * dz);
  const isSpan = (length: number) => Math.abs(span - length) < EDGE_SLACK;
  if (piece.family === "outside-corner") return isSpan(made ?? piece.length);
  if (piece.family === "cap-corner" || piece.family === "connector-corner")
    return piece.turn === "outside" && made === null && isSpan(piece.height);
  return false;
}

function isReveal(one: Reveal["pieces"][number], piece: Piece, made: number | null): boolean {
  if (piece.family !== one.family || !("width" in piece) || piece.width !== one.width) return false;
  if (piece.family === "stop-end") return (made ?? piece.height) === one.length;
  if (piece.family === "reveal-closure") return (made ?? piece.length) === one.length;
  return piece.family === "reveal-corner";
}

const ON_TWO_FACES = ["inside-corner", "connector-corner", "cap-corner"];

/** Ids: faces unique; a piece listed once, but inside corners on the two faces that meet there. */
export function idFaults(fill: UnitFill): string[] {
  const faults: string[] = [];
  const faceIds = fill.faces.map(({ id }) => id);
  if (new Set(faceIds).size !== faceIds.length) faults.push("two faces share an id");
  const listed = new Map<string, { face: FilledFace; one: FacePiece }[]>();
  for (const face of fill.faces) {
    for (const one of face.pieces) listed.set(one.piece, [...(listed.get(one.piece) ?? []), { face, one }]);
  }
  for (const [id, places] of listed) {
    const isPair = ON_TWO_FACES.includes(places[0]!.one.family);
    if (places.length !== (isPair ? 2 : 1)) faults.push(`${id} stands on ${places.length} faces`);
    else if (isPair && !meets(places[0]!, places[1]!) && !meets(places[1]!, places[0]!))
      faults.push(`${id} does not stand where ${places[0]!.face.id} and ${places[1]!.face.id} meet`);
  }
  const others = [
    ...fill.corners.map(({ piece }) => piece),
    ...fill.reveals.flatMap(({ pieces }) => pieces.map(({ piece }) => piece)),
    ...fill.fittings.map(({ piece }) => piece),
  ];
  const seen = new Set(listed.keys());
  for (const id of others) {
    if (seen.has(id)) faults.push(`${id} names two pieces`);
    seen.add(id);
  }
  return faults;
}

interface Placed {
  readonly face: FilledFace;
  readonly one: FacePiece;
}

function meets(left: Placed, right: Placed): boolean {
  const isJoined = [0, 1].every((k) => Math.abs(left.face.to[k]! - right.face.from[k]!) < 0.01);
  const isAtEnds = left.one.x + left.one.width === left.face.length && right.one.x === 0;
  return isJoined && isAtEnds && left.one.z === right.one.z && left.one.code === right.one.code;
}
