// Odd fills with odd soffits: bands of any width cut to one length, strips with props between them, holes, gaps, planks
// too narrow to be named, a slab outside. Tiled exactly, built by no rule of the trade.

import fc from "fast-check";
import type { Soffit, SoffitPiece, SoffitProp, UnitFill } from "../../src/fill/result.ts";
import type { Position } from "../../src/plan/project.ts";
import { sheetFills } from "./sheetFills.ts";

interface Spec {
  readonly isAlongX: boolean;
  /** Where it lies, mm. */
  readonly at: number;
  readonly across: number;
  readonly bands: readonly (readonly [length: number, width: number])[];
  readonly gap: boolean;
  readonly hole: boolean;
  /** Pieces of every so manieth kind are planks. */
  readonly planks: number;
}

const spec: fc.Arbitrary<Spec> = fc.record({
  isAlongX: fc.boolean(),
  at: fc.integer({ min: -2000, max: 9000 }),
  across: fc.constantFrom(600, 1234, 2400, 4000),
  bands: fc.array(fc.tuple(fc.constantFrom(46, 300, 600, 1200), fc.constantFrom(50, 200, 450, 600, 1200)), {
    minLength: 1,
    maxLength: 5,
  }),
  gap: fc.boolean(),
  hole: fc.boolean(),
  planks: fc.integer({ min: 2, max: 9 }),
});

const LEG = 150;

/** A soffit of that form; `id` makes its pieces its own. */
function soffitOf(id: string, room: string, given: Spec): Soffit {
  const { isAlongX, at, across, bands } = given;
  // u runs along the lengths of panels, v across them.
  const rect = (u0: number, u1: number, v0: number, v1: number): readonly Position[] => {
    const ring: readonly Position[] = [
      [u0, v0],
      [u1, v0],
      [u1, v1],
      [u0, v1],
    ];
    return ring.map(([u, v]): Position => (isAlongX ? [at + u, v] : [at + v, u]));
  };
  const length = bands.reduce((sum, [one]) => sum + one, 0) + 150 * (bands.length - 1);
  const laid: SoffitPiece[] = [];
  const strips: SoffitPiece[] = [];
  const props: SoffitProp[] = [];
  const unfilled: Soffit["unfilled"][number][] = [];
  let u = LEG;
  let count = 0;
  bands.forEach(([long, width], index) => {
    if (index > 0) {
      const piece = `${id}-t${index}`;
      const prop = `${id}-h${index}`;
      const outline = rect(u, u + 150, LEG, LEG + across);
      strips.push({ piece, code: "T", family: "shoring-strip", outline, heldBy: prop });
      const middle: Position = isAlongX ? [at + u + 75, LEG + across / 2] : [at + LEG + across / 2, u + 75];
      props.push({ piece: prop, code: "H", at: middle, area: 1 });
      u += 150;
    }
    for (let v = LEG; v < LEG + across; v += width) {
      const outline = rect(u, u + long, v, Math.min(v + width, LEG + across));
      const isPlank = ++count % given.planks === 0;
      if (given.gap && count === 3) unfilled.push({ outline, problem: 0 });
      else
        laid.push({
          piece: `${id}-p${count}`,
          code: isPlank ? "Z" : `S${width}`,
          family: isPlank ? "closure-strip" : "slab-panel",
          outline,
          ...(width < 600 ? { reason: "odd" } : {}),
        });
    }
    u += long;
  });
  const end = 2 * LEG + length;
  const side = 2 * LEG + across;
  const legs = [rect(0, LEG, 0, side), rect(end - LEG, end, 0, side), rect(LEG, end - LEG, 0, LEG)];
  return {
    room,
    along: isAlongX ? "x" : "y",
    height: 2400,
    outline: rect(0, end, 0, side),
    holes: given.hole ? [[...rect(LEG, LEG + 100, side - LEG, side)].reverse()] : [],
    pieces: [
      ...legs.map((outline, k): SoffitPiece => {
        const piece = `${id}-k${k}`;
        return { piece, code: "K", family: "wall-slab-connector", outline };
      }),
      ...laid,
      ...strips,
    ],
    unfilled,
    props,
    counts: { closures: 0, fillers: 0, panels: laid.length, strips: strips.length },
  };
}

/** Every room with its soffit, and at times a slab outside. */
export const soffitFills: fc.Arbitrary<UnitFill> = fc
  .tuple(sheetFills, fc.array(spec, { minLength: 3, maxLength: 3 }), fc.boolean())
  .map(([unit, specs, hasSlab]) => {
    const inside = unit.rooms.map(({ name }, k) => soffitOf(`A/s${k}`, name, specs[k % 3]!));
    const slab: readonly Soffit[] = hasSlab
      ? [{ ...soffitOf("A/b", "<b1>", specs[2]!), isSlab: true as const }]
      : [];
    const problems =
      unit.problems.length > 0
        ? unit.problems
        : [{ severity: "error", kind: "odd", message: "Nothing closes it.", where: {} } as const];
    return { ...unit, problems, soffits: [...inside, ...slab] };
  });

/** Ids of all pieces and props of the soffits, connectors of no face included. */
export function overheadIds({ soffits }: UnitFill): readonly string[] {
  return soffits.flatMap(({ pieces, props }) => [...pieces, ...props].map(({ piece }) => piece));
}
