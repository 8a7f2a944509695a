// A plan of one field written down as the soffit of a fill, so that the audit can read it.

import type { Soffit, SoffitPiece } from "../../src/fill/result.ts";
import { turned, turnedRing } from "../../src/fill/soffit/localFrame.ts";
import type { SoffitInput, SoffitPlan } from "../../src/fill/soffit/planSoffit.ts";
import type { Ring } from "../../src/geom/ring.ts";

interface Box {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
}

/** u as x, v as y. What the plan leaves open points at problem 0. */
export function plannedSoffit({ outline, holes, legs }: SoffitInput, plan: SoffitPlan | null): Soffit {
  const turn = (ring: Ring) => (plan?.direction === "v" ? turnedRing(ring) : ring);
  const ringOf = ({ u0, u1, v0, v1 }: Box) =>
    turn([
      [u0, v0],
      [u1, v0],
      [u1, v1],
      [u0, v1],
    ]);
  let count = 0;
  const next = () => `p${++count}`;
  const tiles = (plan?.tiles ?? []).map((tile): SoffitPiece => {
    const family = tile.kind === "panel" ? "slab-panel" : "closure-strip";
    const code = tile.kind === "panel" ? tile.code : "Closure";
    return { piece: next(), code, family, outline: ringOf(tile), reason: "" };
  });
  const strips: SoffitPiece[] = [];
  const props: Soffit["props"][number][] = [];
  for (const { line, parts, heads } of plan?.strips ?? []) {
    const placed = heads.map(({ u, v, area }) => {
      const at = plan?.direction === "v" ? turned([u, v]) : ([u, v] as const);
      return { piece: next(), code: "Prop", at, area: area / 1e6 };
    });
    const [first, last] = [placed[0], placed.at(-1)];
    (parts ?? []).forEach(({ at, length, isMadeToMeasure }, k) => {
      const held = k === 0 ? first : k === parts!.length - 1 ? last : undefined;
      strips.push({
        piece: next(),
        code: isMadeToMeasure ? `Strip/${length}` : `Strip${length}`,
        family: "shoring-strip",
        outline: ringOf({ ...line, v0: line.v0 + at, v1: line.v0 + at + length }),
        ...(held === undefined ? {} : { heldBy: held.piece }),
      });
    });
    props.push(...placed);
  }
  const cost = plan?.cost ?? { closures: 0, fillers: 0, pieces: 0, strips: 0 };
  return {
    room: "field",
    outline,
    holes,
    pieces: [
      ...legs.map(
        (leg): SoffitPiece => ({ piece: next(), code: "Leg", family: "wall-slab-connector", outline: leg }),
      ),
      ...tiles,
      ...strips,
    ],
    unfilled: (plan?.unbuilt ?? []).map((box) => ({ outline: ringOf(box), problem: 0 })),
    props,
    along:
      plan === null || plan.tiles.length + plan.strips.length === 0
        ? null
        : plan.direction === "u"
          ? "x"
          : "y",
    height: 2400,
    counts: { ...cost, panels: cost.pieces },
  };
}
