// Do opposite joints coincide? Wherever both faces of a wall carry panels or closures, a joint of one is a joint of the
// other; and the ties stand at exactly the joints the rule names.

import type { FacePiece, FilledFace, TieLine } from "../../../src/fill/result.ts";
import { type PlanFace, ringsOf, spanOf } from "./planFaces.ts";
import { type Segment, segmentsOf } from "./segments.ts";
import { type AuditPlan, oppositeAt } from "./walls.ts";

interface Block {
  readonly family: FacePiece["family"];
  readonly low: number;
  readonly high: number;
  readonly z: number;
  readonly top: number;
}

function blocksOf(face: PlanFace): Block[] {
  return face.face.pieces.map(({ family, x, width, z, height }) => {
    const [low, high] = spanOf(face, x, width);
    return { family, low, high, z, top: z + height };
  });
}

const isPanel = ({ family }: Block) => family === "wall-panel" || family === "closure-strip";

/** Joints of panels or closures that meet the inside of a panel or closure across the wall, further in than `slack`. */
export function jointFaults(plan: AuditPlan, slack = 0): string[] {
  const faults: string[] = [];
  for (const face of plan.faces) {
    for (const block of blocksOf(face).filter(isPanel)) {
      for (const [place, inside] of [
        [block.low, block.low + 0.5],
        [block.high, block.high - 0.5],
      ] as const) {
        const other = oppositeAt(plan, face, inside);
        if (other === null) continue;
        const cut = blocksOf(other).find(
          (one) =>
            isPanel(one) &&
            one.low < place - slack &&
            one.high > place + slack &&
            one.z < block.top &&
            one.top > block.z,
        );
        if (cut !== undefined)
          faults.push(
            `${face.face.id}: the joint at ${place} meets the inside of ${cut.low}..${cut.high} on ${other.face.id}`,
          );
      }
    }
  }
  return faults;
}

interface DueTie {
  readonly at: string;
  readonly rows: Map<number, "due" | "open">;
  readonly faces: readonly [PlanFace, PlanFace];
  /** The face before the second one, where the concrete goes straight on in another face at the joint: either will do. */
  readonly below: PlanFace;
  readonly length: number;
}

/** Ties that are missing, too many, of a wrong length or with wrong owners. */
export function tieFaults(plan: AuditPlan): string[] {
  const due = dueTies(plan);
  const faults: string[] = [];
  const found = new Map<string, TieLine>();
  for (const tie of plan.fill.ties) {
    const at = placeName(tie.at[0], tie.at[1]);
    if (found.has(at)) faults.push(`two tie lines at ${at}`);
    found.set(at, tie);
    if (!due.has(at)) faults.push(`the tie line at ${at} stands at no joint of two faces`);
  }
  for (const [at, line] of due) {
    const tie = found.get(at);
    for (const [row, rule] of line.rows) {
      const has = tie?.heights.includes(row) ?? false;
      if (rule === "due" && !has) faults.push(`no tie at ${at} in row ${row}`);
    }
    if (tie === undefined) continue;
    for (const row of tie.heights.filter((height) => !line.rows.has(height)))
      faults.push(`a tie at ${at} in row ${row}, where none belongs`);
    if (Math.abs(tie.length - line.length) > 2) faults.push(`the tie at ${at} is ${tie.length} long`);
    faults.push(...ownerFaults(plan, tie, line));
  }
  return faults;
}

function dueTies(plan: AuditPlan): Map<string, DueTie> {
  const due = new Map<string, DueTie>();
  const rows = plan.kit.rules.tieRows?.value ?? [];
  const segments = plan.faces.map((face) => segmentsOf(plan, face));
  for (const face of plan.faces) {
    const blocks = blocksOf(face);
    for (const place of new Set(blocks.map(({ high }) => high))) {
      if (place >= face.high) continue;
      const other = oppositeAt(plan, face, place + 0.5);
      const below = oppositeAt(plan, face, place - 0.5);
      if (other === null || below === null || (below !== other && !isFlush(plan, below, other))) continue;
      if (below === other && other.index < face.index) continue;
      const middle = (face.line + other.line) / 2;
      const at = face.axis === 0 ? placeName(place, middle) : placeName(middle, place);
      const heights = new Map<number, "due" | "open">();
      for (const row of rows) {
        const verdict = rowVerdict({ place, row, sides: [[face], [below, other]], plan, segments });
        if (verdict !== "none") heights.set(row, verdict);
      }
      if (heights.size > 0)
        due.set(at, {
          at,
          rows: heights,
          faces: [face, other],
          below,
          length: Math.abs(face.line - other.line),
        });
    }
  }
  return due;
}

function isFlush(plan: AuditPlan, a: PlanFace, b: PlanFace): boolean {
  return [a, b].some((one) => one.toTurn === "straight" && plan.faces[one.next] === (one === a ? b : a));
}

interface RowQuestion {
  readonly place: number;
  readonly row: number;
  /** The faces on either side of the wall: two on one side where the concrete goes straight on in another face. */
  readonly sides: readonly (readonly PlanFace[])[];
  readonly plan: AuditPlan;
  readonly segments: readonly (readonly Segment[])[];
}

// A row on the edge of a piece, or an opening that is near only slantwise: the rule leaves it open.
function rowVerdict(question: RowQuestion): "due" | "open" | "none" {
  const { place, row, sides, plan } = question;
  const faces = sides.flat();
  if (isClosingSide(question)) return "none";
  const has = (strict: boolean) =>
    sides.every((side) => {
      const here = side
        .flatMap(blocksOf)
        .filter(({ z, top }) => (strict ? z < row && top > row : z <= row && top >= row));
      return here.some(({ high }) => high === place) && here.some(({ low }) => low === place);
    });
  if (!has(false)) return "none";
  const edge = plan.kit.rules.tieEdge?.value ?? 0;
  const gaps = faces.flatMap((face) =>
    face.face.openings.map((opening) => {
      const [low, high] = spanOf(face, opening.x, opening.width);
      const aside = Math.max(low - place, place - high, 0);
      const above = Math.max(opening.sill - row, row - opening.head, 0);
      return { straight: Math.max(aside, above), slant: Math.sqrt(aside * aside + above * above) };
    }),
  );
  if (gaps.some(({ slant }) => slant < edge)) return "none";
  const isOpen = gaps.some(({ straight }) => straight < edge) || !has(true);
  return isOpen ? "open" : "due";
}

// A closure in an interval is tied on its side away from the closing end only.
function isClosingSide({ place, row, sides, segments }: RowQuestion): boolean {
  return sides.flat().some((face) => {
    const closures = blocksOf(face).filter(
      ({ family, z, top }) => family === "closure-strip" && z <= row && top >= row,
    );
    return closures.some((closure) => {
      const home = homeOf(face, closure, segments[face.index]!);
      if (home.kind !== "interval") return false;
      return (home.closing === "low" ? closure.low : closure.high) === place;
    });
  });
}

// A closure over or under an opening stands in a band, an interval of its own.
function homeOf(face: PlanFace, { low, high }: Block, segments: readonly Segment[]) {
  const band = face.face.openings.find(
    (o) =>
      o.formed === "band" && spanOf(face, o.x, o.width)[0] <= low && spanOf(face, o.x, o.width)[1] >= high,
  );
  if (band !== undefined) return { kind: "interval", closing: "high" } as const;
  return segments.find((one) => one.low <= low && one.high >= high) ?? { kind: "unclear", closing: null };
}

function placeName(x: number, y: number): string {
  return `${Math.round(x * 1000) / 1000 + 0}, ${Math.round(y * 1000) / 1000 + 0}`;
}

function ownerFaults(plan: AuditPlan, tie: TieLine, { faces, below, at }: DueTie): string[] {
  const second = tie.faces.includes(below.face.id) ? below : faces[1];
  const ids = [faces[0].face.id, second.face.id];
  if (!ids.includes(tie.faces[0]) || !ids.includes(tie.faces[1]) || tie.faces[0] === tie.faces[1])
    return [`the tie at ${at} joins ${tie.faces.join(" and ")}, not ${ids.join(" and ")}`];
  const [a, b] = [faces[0].face, second.face];
  if (a.room === b.room) return [];
  const owner = ownerOf(plan, a, b);
  return tie.faces[0] === owner.id ? [] : [`the tie at ${at} belongs to ${owner.id}, not ${tie.faces[0]}`];
}

function ownerOf(plan: AuditPlan, a: FilledFace, b: FilledFace): FilledFace {
  if (a.room === null) return b;
  if (b.room === null) return a;
  const [p, q] = [lowerLeft(plan, a.room), lowerLeft(plan, b.room)];
  return (p[0] - q[0] || p[1] - q[1]) < 0 ? a : b;
}

/** The outline point of a room of least x, then y. */
function lowerLeft(plan: AuditPlan, room: string): readonly [number, number] {
  const points = ringsOf(plan.faces)
    .filter(([first]) => first!.face.room === room)
    .flatMap((ring) => ring.map(({ face }) => face.from));
  return [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1])[0]!;
}
