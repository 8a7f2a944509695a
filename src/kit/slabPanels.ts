// Slab panels by size. A panel spans with its length from support to support; across the band its width counts.
//
//            | band |
//   +--------+------+
//   |        |      |  across: the widths on offer
//   +--------+------+
//   |        |      |
//   +--------+------+   along: the length of the band
//
// A panel may be turned as long as no more than the widest panel's width lies on a strip: heads stand where panels meet,
// and no further apart than that (common practice, no source).

import type { Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { Kit, SlabPanel } from "./kit.ts";
import { onePerSize } from "./pieceLengths.ts";

/** A width across a band that one slab panel covers. */
export interface SlabOffer {
  readonly width: Mm;
  readonly code: string;
  readonly standard: boolean;
}

/** Lengths of band for which there is a slab panel, turned or not, each once, longest first, mm. */
export function slabBandLengths(kit: Kit): readonly Mm[] {
  const panels = familyOf(kit, "slab-panel");
  const turned = panels.filter(mayBeTurned(kit)).map((panel) => panel.width);
  return [...new Set([...panels.map((panel) => panel.length), ...turned])].sort((a, b) => b - a);
}

/** Widths on offer across a band of this length, each once, widest first. Unturned panels are taken before turned ones. */
export function slabOffersAt(kit: Kit, length: Mm): readonly SlabOffer[] {
  const panels = familyOf(kit, "slab-panel");
  const straight = onePerSize(
    panels.filter((panel) => panel.length === length),
    (panel) => panel.width,
  );
  const widths = new Set(straight.map((panel) => panel.width));
  const turned = onePerSize(
    panels.filter(mayBeTurned(kit)).filter((panel) => panel.width === length && !widths.has(panel.length)),
    (panel) => panel.length,
  );
  const offers = [
    ...straight.map((panel) => offerOf(panel, panel.width)),
    ...turned.map((panel) => offerOf(panel, panel.length)),
  ];
  return offers.sort((a, b) => b.width - a.width);
}

function mayBeTurned(kit: Kit): (panel: SlabPanel) => boolean {
  const widest = familyOf(kit, "slab-panel").reduce((most, panel) => Math.max(most, panel.width), 0);
  return (panel) => panel.length <= widest;
}

function offerOf(panel: SlabPanel, width: Mm): SlabOffer {
  return { width, code: panel.code, standard: panel.standard };
}
