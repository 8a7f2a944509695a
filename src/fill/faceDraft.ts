// A face while its pieces are being placed: numbers for the pieces come last, when every face is done.

import type { FacePart } from "./parts.ts";
import type { Profile } from "./profile.ts";
import type { FaceOpening, FacePiece, Unfilled } from "./result.ts";
import type { SettledFace } from "./settled.ts";

/** A piece that gets its number when every face is done. */
export type DraftPiece = Omit<FacePiece, "piece"> & { piece: string };

/** Pieces that stand on two faces: what they are called until they have a number, the same on both. */
export type SharedPieces = Map<DraftPiece, string>;

export interface FaceDraft {
  readonly settled: SettledFace;
  readonly profile: Profile;
  readonly id: string;
  /** Room name, null = outside. */
  readonly room: string | null;
  readonly parts: readonly FacePart[];
  readonly openings: readonly FaceOpening[];
  /** By x, then z. */
  readonly pieces: readonly DraftPiece[];
  readonly unfilled: readonly Unfilled[];
  readonly shared: ReadonlyMap<DraftPiece, string>;
}
