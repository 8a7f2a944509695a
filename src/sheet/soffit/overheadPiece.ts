// Questions about one piece of a soffit that several parts of a sheet ask: its size, its look, who lifts it.

import type { SoffitPiece } from "../../fill/result.ts";
import { distance } from "../../geom/point.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import type { SheetInfo } from "../info.ts";
import { isWithinPersonLimit } from "../pieceKind.ts";
import { fillerTone, type PieceLook } from "../pieceMark.ts";
import { twiceArea } from "../planView.ts";

/** Overhead a piece larger than this is lifted by two whatever it weighs, mm². Common practice, no source. */
const ONE_PERSON_AREA = 500_000;

/** The sides of a rectangle however it lies, whole mm; of any other outline those of its first corner. */
export function sidesOf(outline: readonly Position[]): { readonly short: Mm; readonly long: Mm } {
  const [a, b, c] = outline;
  if (a === undefined || b === undefined || c === undefined) return { short: 0, long: 0 };
  const [one, other] = [Math.round(distance(a, b)), Math.round(distance(b, c))];
  return { short: Math.min(one, other), long: Math.max(one, other) };
}

export function isTwoPersonOverhead(
  { code, family, outline }: Pick<SoffitPiece, "code" | "family" | "outline">,
  info: SheetInfo,
): boolean {
  if (family === "slab-panel" && Math.abs(twiceArea(outline)) / 2 > ONE_PERSON_AREA) return true;
  return isWithinPersonLimit(code, info) === false;
}

/** Fillers deepen as they get narrower, as on a wall; a standard panel stays white. */
export function overheadLook(piece: SoffitPiece, info: SheetInfo): PieceLook {
  const { code, family, reason } = piece;
  const isFiller = family === "slab-panel" && (info.pieces[code]?.standard === false || reason !== undefined);
  return {
    family,
    tone: isFiller ? fillerTone(sidesOf(piece.outline).short) : "paper",
    isZone: false,
    isTwoPerson: isTwoPersonOverhead(piece, info),
  };
}
