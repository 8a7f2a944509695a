// Does every slab panel lie on something at both ends, and do the heads stand where they must?
//
//   connector ▓┌────────┐│strip│┌────────┐(plank)▓    an end lies wholly on strips, connectors, or a plank that itself
//             ▓└────────┘│  ●  │└────────┘(     )▓    lies wholly on one of these

import type { Problem } from "../../../src/fill/result.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import { type AuditSoffit, areaOf, type Box, type BoxPiece, type Line, type Shape } from "./soffitShapes.ts";

/** What a place is left open for where a connector belongs: whoever forms it to measure carries what ends there. */
const CONNECTOR_PLACES = ["connector-gap", "connectors-cross"];
/** Common practice, no source, mm. */
const END_REACH = 900;

type Side = "u0" | "u1";
type Stretch = readonly [low: number, high: number];

/** Ends of panels and closures with nothing, or only part of their width, to lie on. */
export function supportFaults(read: AuditSoffit, problems: readonly Problem[]): string[] {
  const { soffit, panels, closures } = read;
  const lying = carriersOf(read, problems);
  const isPlankOn = (one: Box, side: Side) =>
    isCovered(
      one,
      lying.filter((carrier) => carrier.at === one[side] && carrier.faces === side),
    );
  const planks = (["u0", "u1"] as const).flatMap((side) =>
    closures
      .filter((one) => isPlankOn(one, side))
      .map(({ u0, u1, v0, v1 }) => ({
        faces: side,
        at: side === "u0" ? u1 : u0,
        stretch: [v0, v1] as Stretch,
      })),
  );
  const all = [...lying, ...planks];
  const faults: string[] = [];
  for (const one of [...panels, ...closures]) {
    const ends = (["u0", "u1"] as const).map((side) =>
      isCovered(
        one,
        all.filter((carrier) => carrier.at === one[side] && carrier.faces === side),
      ),
    );
    const isPlank =
      closures.includes(one) && (ends[0] || ends[1]) && reachesAcross(one, [...panels, ...closures]);
    if (!(ends[0] && ends[1]) && !isPlank)
      faults.push(
        `${soffit.room}: ${one.one.code} at u ${one.u0}..${one.u1}, v ${one.v0}..${one.v1} hangs at an end`,
      );
  }
  return faults;
}

// A plank lies on its carrier and against the ends of the panels beside it.
function reachesAcross(plank: Box, tiles: readonly Box[]): boolean {
  const against = tiles.filter(({ u0, u1 }) => u1 === plank.u0 || u0 === plank.u1);
  return isCovered(
    plank,
    against.map(({ v0, v1 }) => ({ stretch: [v0, v1] })),
  );
}

interface Carrier {
  /** Which end of a piece lies on it. */
  readonly faces: Side;
  readonly at: number;
  readonly stretch: Stretch;
}

function carriersOf({ lines, connectors, unfilled }: AuditSoffit, problems: readonly Problem[]): Carrier[] {
  const places = unfilled.filter(({ problem }) => CONNECTOR_PLACES.includes(problems[problem]?.kind ?? ""));
  const shapes = [...connectors, ...places].map(({ shape }) => shape);
  return [
    ...lines.flatMap(({ u0, u1, v0, v1 }): Carrier[] => [
      { faces: "u0", at: u1, stretch: [v0, v1] },
      { faces: "u1", at: u0, stretch: [v0, v1] },
    ]),
    ...shapes.flatMap(uprightEdges),
  ];
}

function uprightEdges(shape: Shape): Carrier[] {
  const turn = areaOf(shape) >= 0 ? 1 : -1;
  return shape.flatMap(([u, v], k): Carrier[] => {
    const [a, b] = shape[(k + 1) % shape.length]!;
    if (u !== a || v === b) return [];
    // Counter-clockwise the body lies left of the edge: going up, at lesser u, so what ends there begins at its u0.
    const faces = b > v === turn > 0 ? "u0" : "u1";
    return [{ faces, at: u, stretch: [Math.min(v, b), Math.max(v, b)] }];
  });
}

function isCovered({ v0, v1 }: Box, carriers: readonly Pick<Carrier, "stretch">[]): boolean {
  let reached = v0;
  for (const { stretch } of [...carriers].sort((a, b) => a.stretch[0] - b.stretch[0])) {
    if (stretch[0] > reached) break;
    reached = Math.max(reached, stretch[1]);
  }
  return reached >= v1;
}

/** Heads under every line of strips: where, how far apart, what they hold. */
export function headFaults(read: AuditSoffit, kit: Kit): string[] {
  const { room, props } = read.soffit;
  const faults: string[] = read.strays.map(({ one }) => `${room}: ${one.piece} stands under no strip`);
  // Without a prop that reaches there is an error and nothing stands.
  if (props.length === 0) return faults;
  const pitch = kit.rules.propPitch?.value ?? Number.POSITIVE_INFINITY;
  for (const line of read.lines) {
    const what = `${room}: the strip at u ${line.u0}, v ${line.v0}..${line.v1}`;
    const heads = line.props.map(({ v }) => v);
    if (heads.length === 0) {
      faults.push(`${what} stands on nothing`);
      continue;
    }
    const [first, last] = [heads[0]!, heads.at(-1)!];
    if (first - line.v0 > END_REACH || line.v1 - last > END_REACH)
      faults.push(`${what} reaches more than ${END_REACH} past a head`);
    heads.forEach((head, k) => {
      if (k > 0 && head - heads[k - 1]! > pitch)
        faults.push(`${what}: ${head - heads[k - 1]!} between heads`);
    });
    const half = (line.u1 - line.u0) / 2;
    for (const joint of jointsOn(line, read)) {
      if (!heads.some((head) => Math.abs(head - joint) <= half)) faults.push(`${what}: no head at ${joint}`);
    }
    if (line.v1 - line.v0 >= 2 * half && (first < line.v0 + half || last > line.v1 - half))
      faults.push(`${what}: a head sticks out`);
    if (line.props.some(({ u }) => u !== line.u0 + half)) faults.push(`${what}: a head is off its middle`);
    for (const part of line.parts.slice(1)) {
      if (!heads.includes(part.v0)) faults.push(`${what}: the joint at ${part.v0} lies on no head`);
    }
    faults.push(...heldFaults(what, line));
  }
  return faults;
}

// Where panels meet: on either side of the line, over a plank that lies along it.
function jointsOn(line: Line, { panels, closures }: AuditSoffit): number[] {
  const edges: { at: number; side: Side }[] = [
    { at: line.u0, side: "u1" },
    { at: line.u1, side: "u0" },
  ];
  for (const { u0, u1, v0, v1 } of closures) {
    if (v0 > line.v0 || v1 < line.v1) continue;
    if (u1 === line.u0) edges.push({ at: u0, side: "u1" });
    if (u0 === line.u1) edges.push({ at: u1, side: "u0" });
  }
  const joints = edges.flatMap(({ at, side }) =>
    panels.filter((one) => one[side] === at).flatMap(({ v0, v1 }) => [v0, v1]),
  );
  return joints.filter((v) => v > line.v0 && v < line.v1);
}

// Either end is held by the head nearest to it, never left resting on a connector.
function heldFaults(what: string, { parts, props }: Line): string[] {
  const held = (part: BoxPiece, prop: { readonly one: { readonly piece: string } }) =>
    part.one.heldBy === prop.one.piece;
  const [first, last] = [parts[0]!, parts.at(-1)!];
  const faults: string[] = [];
  // One strip from end to end hangs on either.
  if (first === last && held(last, props.at(-1)!)) return [];
  if (!held(first, props[0]!)) faults.push(`${what}: its first end is held by ${first.one.heldBy}`);
  if (last !== first && !held(last, props.at(-1)!))
    faults.push(`${what}: its last end is held by ${last.one.heldBy}`);
  if (parts.slice(1, -1).some(({ one }) => one.heldBy !== undefined))
    faults.push(`${what}: a strip between others is held`);
  return faults;
}

/**
 * Areas: what the strips take, and half of every panel for each of its ends that lies on one, is what all heads carry.
 * Beside a plank a strip carries more than that.
 */
export function tributaryFaults(read: AuditSoffit): string[] {
  const { soffit, lines, panels, closures } = read;
  if (soffit.props.length === 0) return [];
  const carried = soffit.props.reduce((sum, { area }) => sum + area, 0) * 1e6;
  const whole = [...panels, ...closures, ...lines].reduce((sum, box) => sum + sizeOf(box), 0);
  const faults: string[] = [];
  const slack = 60 * soffit.props.length; // mm²: areas are given to 4 decimals of m²
  if (carried > whole + slack) faults.push(`${soffit.room}: heads carry ${carried} of ${whole} mm²`);
  let due = lines.reduce((sum, line) => sum + sizeOf(line), 0);
  for (const one of [...panels, ...closures]) {
    for (const line of lines) {
      const shared = Math.min(one.v1, line.v1) - Math.max(one.v0, line.v0);
      if (shared <= 0) continue;
      if (one.u1 === line.u0) due += (shared * (one.u1 - one.u0)) / 2;
      if (one.u0 === line.u1) due += (shared * (one.u1 - one.u0)) / 2;
    }
  }
  const hasPlank = closures.some((one) => lines.some(({ u0, u1 }) => one.u0 === u1 || one.u1 === u0));
  if (hasPlank ? carried < due - slack : Math.abs(carried - due) > slack)
    faults.push(`${soffit.room}: heads carry ${carried} mm², the pieces on them weigh in at ${due}`);
  return faults;
}

function sizeOf({ u0, u1, v0, v1 }: Box): number {
  return (u1 - u0) * (v1 - v0);
}
