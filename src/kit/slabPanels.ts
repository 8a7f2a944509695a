// Slab panels by size. A slab panel has no upper end: it may be turned in the plan.
//
//            | band |
//   +--------+------+
//   |        |      |  across: the widths on offer
//   +--------+------+
//   |        |      |
//   +--------+------+   along: the length of the band

import type { Mm } from "../units.ts";
import { familyOf } from "./byFamily.ts";
import type { Kit, SlabPanel } from "./kit.ts";
import { onePerSize } from "./pieceLengths.ts";
import { preferred } from "./preference.ts";

/** A width across a band that one slab panel covers. */
export interface SlabOffer {
  readonly width: Mm;
  readonly code: string;
  readonly standard: boolean;
}

/** Lengths of band for which there is a slab panel, turned or not, each once, longest first, mm. */
export function slabBandLengths(kit: Kit): readonly Mm[] {
  const sizes = familyOf(kit, "slab-panel").flatMap((panel) => [panel.length, panel.width]);
  return [...new Set(sizes)].sort((a, b) => b - a);
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
    panels.filter((panel) => panel.width === length && !widths.has(panel.length)),
    (panel) => panel.length,
  );
  const offers = [
    ...straight.map((panel) => offerOf(panel, panel.width)),
    ...turned.map((panel) => offerOf(panel, panel.length)),
  ];
  return offers.sort((a, b) => b.width - a.width);
}

/** The slab panel of exactly these sides, in whichever order; one whose `width` is the first is taken before the other. */
export function slabPanelAt(kit: Kit, width: Mm, length: Mm): SlabPanel | null {
  const panels = familyOf(kit, "slab-panel");
  const straight = panels.filter((panel) => panel.width === width && panel.length === length);
  const turned = panels.filter((panel) => panel.width === length && panel.length === width);
  return preferred(straight) ?? preferred(turned);
}

function offerOf(panel: SlabPanel, width: Mm): SlabOffer {
  return { width, code: panel.code, standard: panel.standard };
}
