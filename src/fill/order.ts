// In which order the pieces of one interval stand, counted from its closing end: the end that is filled last.
//
//   closing end                                        start
//   | closure | 250 | 450 |  600  |  600  |  600  |  …
//             fillers       standard panels
//             narrow to wide
//
// The narrow pieces stand where the ring closes: last in, first out. Which end is the closing end, the caller
// knows.

import type { FillerPlace } from "../plan/project.ts";
import type { Mm } from "../units.ts";

/** One piece of the sequence. */
export interface OrderedPiece {
  readonly width: Mm;
  readonly kind: "panel" | "closure";
}

export interface OrderOptions {
  /** Whether an inside corner of either face stands at the closing end. */
  readonly cornerAtClosingEnd: boolean;
  /** "corner" where not given. */
  readonly fillers?: FillerPlace;
}

/**
 * The pieces of a cover from the closing end.
 *
 * A closure stands at the closing end; with no corner there and two panels or more, behind the first panel,
 * so that it is never the last piece at a jamb or a free end. With fillers in the middle it stands with them,
 * behind a panel.
 */
export function orderFromClosingEnd(
  cover: { readonly widths: readonly Mm[]; readonly closure: Mm | null },
  isStandard: (width: Mm) => boolean,
  options: OrderOptions,
): readonly OrderedPiece[] {
  const fillers = cover.widths.filter((width) => !isStandard(width)).sort(narrowToWide);
  const standards = cover.widths.filter(isStandard).sort(narrowToWide);
  const place = options.fillers ?? "corner";
  // The larger half stands at the closing end, so that one standard panel alone keeps the closure off the
  // end.
  const before = place === "middle" ? Math.ceil(standards.length / 2) : 0;

  const panels =
    place === "jamb"
      ? [...fillers, ...standards].reverse()
      : [...standards.slice(0, before), ...fillers, ...standards.slice(before)];
  const pieces: OrderedPiece[] = panels.map((width) => ({ width, kind: "panel" }));
  if (cover.closure === null) return pieces;

  const first = options.cornerAtClosingEnd || panels.length < 2 ? 0 : 1;
  pieces.splice(before < panels.length ? Math.max(first, before) : first, 0, {
    width: cover.closure,
    kind: "closure",
  });
  return pieces;
}

function narrowToWide(a: Mm, b: Mm): number {
  return a - b;
}
