// A wall with two faces cut at the forced joints of both, by other means than the fill's.

/** Of a face, on the common axis, mm. */
export interface Element {
  readonly kind: string;
  readonly from: number;
  readonly to: number;
}

interface Piece {
  readonly from: number;
  readonly to: number;
  readonly kind: "interval" | "zone";
}

/** Free intervals (both faces carry panels) and zones (one does), cut at every forced joint. */
export function cut(a: readonly Element[], b: readonly Element[]): Piece[] {
  const places = [...new Set([...a, ...b].flatMap(({ from, to }) => [from, to]))].sort((x, y) => x - y);
  const carries = (face: readonly Element[], from: number, to: number): boolean =>
    face.some((one) => one.kind === "run" && one.from <= from && one.to >= to);
  // The end of a gap is the edge of a joining wall: it forces no joint, only the ends of its legs do.
  const isForced = (place: number): boolean =>
    [a, b].some((face) =>
      face.some((one, index) => {
        const next = face[index + 1];
        return next !== undefined && one.to === place && (one.kind === "run") !== (next.kind === "run");
      }),
    );
  const pieces: Piece[] = [];
  for (const [index, to] of places.entries()) {
    const from = places[index - 1];
    if (from === undefined) continue;
    const faces = [a, b].filter((face) => carries(face, from, to)).length;
    if (faces === 0) continue;
    const last = pieces.at(-1);
    const kind = faces === 2 ? "interval" : "zone";
    if (last !== undefined && last.to === from && last.kind === kind && !isForced(from)) {
      pieces[pieces.length - 1] = { ...last, to };
    } else pieces.push({ from, to, kind });
  }
  return pieces;
}
