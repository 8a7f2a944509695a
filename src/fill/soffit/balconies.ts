// Slabs outside the walls, each with the stretches of outside wall that it lies along.

import { comparePoints } from "../../geom/point.ts";
import { leastCorner } from "../../geom/ring.ts";
import type { Position, SlabOutline } from "../../plan/project.ts";
import type { FaceDraft } from "../faceDraft.ts";

export interface Balcony {
  readonly slab: SlabOutline;
  /** Faces under the slab, those that meet in one chain. */
  readonly chains: readonly (readonly FaceDraft[])[];
}

/** A slab's edge within this of a face lies along it, mm; the tie tolerance. */
const ALONG = 2;

/** The slabs by their least corner, whatever their order in the file. */
export function balconiesOf(
  outlines: readonly SlabOutline[],
  drafts: readonly FaceDraft[],
): readonly Balcony[] {
  const under = drafts.filter(({ settled }) => settled.formed.exposure === "under-slab");
  const slabs = [...outlines].sort((a, b) => comparePoints(least(a), least(b)));
  return slabs.map((slab) => ({ slab, chains: chained(under.filter((draft) => liesAlong(draft, slab))) }));
}

function least({ outline }: SlabOutline): Position {
  return outline[leastCorner(outline)] ?? [0, 0];
}

function liesAlong({ settled: { formed } }: FaceDraft, { outline }: SlabOutline): boolean {
  const middle: Position = [(formed.from[0] + formed.to[0]) / 2, (formed.from[1] + formed.to[1]) / 2];
  return outline.some((p, k) => {
    const q = outline[(k + 1) % outline.length]!;
    const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length === 0) return false;
    const along = ((middle[0] - p[0]) * dx + (middle[1] - p[1]) * dy) / length;
    const aside = Math.abs((middle[0] - p[0]) * dy - (middle[1] - p[1]) * dx) / length;
    return aside <= ALONG && along >= -ALONG && along <= length + ALONG;
  });
}

function chained(faces: readonly FaceDraft[]): readonly (readonly FaceDraft[])[] {
  const byIndex = new Map(faces.map((draft) => [draft.settled.index, draft]));
  const chains: FaceDraft[][] = [];
  for (const draft of faces) {
    if (byIndex.has(draft.settled.formed.previous)) continue;
    const chain: FaceDraft[] = [];
    let at: FaceDraft | undefined = draft;
    while (at !== undefined && !chain.includes(at)) {
      chain.push(at);
      at = byIndex.get(at.settled.formed.next);
    }
    chains.push(chain);
  }
  return chains;
}
