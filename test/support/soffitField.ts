// Fields of soffit for tests of the plan alone: an outline, connectors all the way round it, and small kits.
//
//   ▓▓▓▓▓▓▓▓      ▓ legs, cut to the mitre at every corner
//   ▓      ▓
//   ▓   ▓▓▓▓

import fc from "fast-check";
import type { SoffitInput } from "../../src/fill/soffit/planSoffit.ts";
import type { Ring } from "../../src/geom/ring.ts";
import type { Kit } from "../../src/kit/kit.ts";
import { kitOf, piece } from "./kits.ts";

export interface Size {
  readonly width: number;
  readonly length: number;
  readonly standard: boolean;
}

export interface SmallKit {
  readonly sizes: readonly Size[];
  /** Width of the strips; null: none in the kit. */
  readonly strip: number | null;
  readonly closure: { readonly least: number; readonly greatest: number } | null;
}

export function slabKit({ sizes, strip, closure }: SmallKit, stripLengths: readonly number[] = [1200]): Kit {
  return kitOf([
    ...sizes.map(({ width, length, standard }) =>
      piece({ family: "slab-panel", code: `S${width}x${length}`, width, length, standard }),
    ),
    ...(strip === null
      ? []
      : stripLengths.map((length) =>
          piece({ family: "shoring-strip", code: `Strip${length}`, width: strip, length }),
        )),
    ...(closure === null ? [] : [piece({ family: "closure-strip", code: "Closure", ...closure })]),
    piece({ family: "prop", code: "Prop", least: 1000, greatest: 4000, class: null }),
  ]);
}

/** A plan's input with connectors of `depth` round a ring along the axes that runs counter-clockwise. */
export function fieldOf(
  outline: Ring,
  depth: number,
  kit: Kit,
  given: Partial<SoffitInput> = {},
): SoffitInput {
  const widths = kit.pieces.flatMap((one) => (one.family === "shoring-strip" ? [one.width] : []));
  return {
    outline,
    holes: [],
    legs: depth === 0 ? [] : legsInside(outline, depth),
    kit,
    stripWidths: [...new Set(widths)],
    stripLengthsOf: (width) =>
      kit.pieces
        .flatMap((one) => (one.family === "shoring-strip" && one.width === width ? [one.length] : []))
        .sort((a, b) => b - a),
    propPitch: 1200,
    direction: null,
    closing: { u: { lengths: "high", widths: "high" }, v: { lengths: "high", widths: "high" } },
    ...given,
  };
}

/** A strip of each edge's inner side, `depth` wide, cut to the mitre at both ends. */
export function legsInside(outline: Ring, depth: number): readonly Ring[] {
  const at = (k: number) => outline[(k + outline.length) % outline.length]!;
  const inward = (k: number) => {
    const [du, dv] = [at(k + 1)[0] - at(k)[0], at(k + 1)[1] - at(k)[1]];
    return [0 - Math.sign(dv) * depth, Math.sign(du) * depth] as const;
  };
  const inset = outline.map(([u, v], k) => {
    const [a, b] = [inward(k - 1), inward(k)];
    return [u + a[0] + b[0], v + a[1] + b[1]] as const;
  });
  return outline.map((from, k) => [from, at(k + 1), inset[(k + 1) % inset.length]!, inset[k]!]);
}

/** The same legs cut square: a corner piece at every corner, and a straight along every edge that has room for one. */
export function squareLegs(
  outline: Ring,
  depth: number,
): { readonly corners: readonly Ring[]; readonly straights: readonly Ring[] } {
  const mitred = legsInside(outline, depth);
  const corners = mitred.map(([from, , , inset]) => boxRing(from!, inset!));
  const straights = mitred.flatMap((leg, k): Ring[] => {
    const [from, to, insetTo, insetFrom] = leg;
    const isLevel = from![1] === to![1];
    const own = isLevel ? 0 : 1;
    const sign = Math.sign(to![own] - from![own]);
    // Past a re-entrant corner the piece there lies beyond the edge's end.
    const low = sign * Math.max(sign * from![own], sign * insetFrom![own]);
    const high = sign * Math.min(sign * to![own], sign * insetTo![own]);
    if ((high - low) * sign <= 0) return [];
    const other = isLevel ? 1 : 0;
    const [a, b] = [from![other], mitred[k]![3]![other]];
    return [isLevel ? boxRing([low, a], [high, b]) : boxRing([a, low], [b, high])];
  });
  return { corners, straights };
}

function boxRing(a: Ring[number], b: Ring[number]): Ring {
  const [u0, u1] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
  const [v0, v1] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])];
  return [
    [u0, v0],
    [u1, v0],
    [u1, v1],
    [u0, v1],
  ];
}

export function rectangle(width: number, height: number): Ring {
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
}

/** An L: `width` × `height` less its upper right corner beyond `atU` and above `atV`. */
export function ell(width: number, height: number, atU: number, atV: number): Ring {
  return [
    [0, 0],
    [width, 0],
    [width, atV],
    [atU, atV],
    [atU, height],
    [0, height],
  ];
}

/** Few sizes, none a multiple of the others on purpose or not, in units so small that everything can be tried. */
export const smallKits: fc.Arbitrary<SmallKit> = fc.record({
  sizes: fc
    .array(
      fc.record({
        width: fc.integer({ min: 3, max: 9 }),
        length: fc.integer({ min: 3, max: 14 }),
        standard: fc.boolean(),
      }),
      { minLength: 1, maxLength: 4 },
    )
    .map((sizes) => [...new Map(sizes.map((one) => [`${one.width} ${one.length}`, one])).values()]),
  strip: fc.constantFrom(null, 1, 2, 2, 3, 4),
  closure: fc.constantFrom(null, { least: 1, greatest: 2 }, { least: 2, greatest: 3 }),
});
