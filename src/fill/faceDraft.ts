// A face while its pieces are being placed: numbers for the pieces come last, when every face is done.

import type { FacePart } from "./parts.ts";
import type { Profile } from "./profile.ts";
import type { FaceOpening, FacePiece, Unfilled } from "./result.ts";
import type { SettledFace } from "./settled.ts";

/** A piece without its number. Drafts with the same `shared` key are one piece on two faces. */
export type DraftPiece = Omit<FacePiece, "piece"> & { readonly shared?: string };

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
}
