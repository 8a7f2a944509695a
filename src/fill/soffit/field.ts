// A soffit before it is filled: its outline, what is taken off it, and what it hangs on.

import type { Ring } from "../../geom/ring.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Mm } from "../../units.ts";
import type { FaceDraft } from "../faceDraft.ts";
import type { PieceBook } from "../pieceBook.ts";
import type { ProblemLog } from "../problems.ts";
import type { EdgePiece } from "../result.ts";
import type { Leg } from "./legs.ts";
import type { LocalFrame } from "./localFrame.ts";
import type { SoffitInput } from "./planSoffit.ts";

export interface SoffitContext {
  readonly drafts: readonly FaceDraft[];
  readonly corners: readonly EdgePiece[];
  readonly kit: Kit;
  readonly book: PieceBook;
  readonly log: ProblemLog;
  /** The storey's, mm. */
  readonly clearHeight: Mm;
}

/** A soffit before it is filled, in its own axes. */
export interface SoffitField {
  readonly room: string;
  readonly isSlab: boolean;
  readonly frame: LocalFrame;
  readonly outline: Ring;
  readonly columns: readonly Ring[];
  readonly openings: readonly Ring[];
  readonly legs: readonly Leg[];
  readonly faces: readonly FaceDraft[];
  /** Floor to soffit, mm. */
  readonly height: Mm;
  readonly forced: "x" | "y" | null;
  readonly closing: SoffitInput["closing"];
}
