// The fill of one room laid by hand: 3000 × 3600 clear, walls and slab 100, a door in the south wall.
//
//      3600 ┌────────────┐      Runs, stack and counts are those of a worked example made before the program; the
//           │            │      tests compare the sheets with its figures. Faces are walked as the format says:
//           │    3000    │      concrete on the left, so inside the room the south face runs from east to west.
//           └────  ──────┘

import type { EdgePiece, FacePiece, FilledFace, TieLine, UnitFill } from "../../src/fill/result.ts";
import type { Family } from "../../src/kit/kit.ts";
import type { SheetInfo } from "../../src/sheet/info.ts";
import { unitEntry } from "./fillDocument.ts";

const PANEL = 2250;
const DOOR = { id: "d1", width: 900, sill: 0, head: 2100, formed: "band" } as const;
const ROWS = [150, 450, 750, 1200, 1800];

/** One side of a face's run: a width, a corner leg ("C") or the door ("D"). */
type Part = number | "C" | "D";

interface Side {
  readonly name: "s" | "e" | "n" | "w";
  readonly inner: readonly Part[];
  readonly outer: readonly Part[];
  readonly connectors: readonly number[];
  readonly caps: readonly number[];
  /** Corners of the room and of the building, in the order of the walk. */
  readonly room: readonly [from: Corner, to: Corner];
}

type Corner = "sw" | "se" | "nw" | "ne";

const INNER: { readonly [C in Corner]: readonly [number, number] } = {
  sw: [100, 100],
  se: [3100, 100],
  nw: [100, 3700],
  ne: [3100, 3700],
};
const OUTER: { readonly [C in Corner]: readonly [number, number] } = {
  sw: [0, 0],
  se: [3200, 0],
  nw: [0, 3800],
  ne: [3200, 3800],
};

const long = { connectors: [1200, 1200, 600, 300], caps: [1200, 1200, 1200, 200] };
const short = { connectors: [1200, 1200, 300], caps: [1200, 1200, 600, 200] };

/** Inner runs in the order of their walk; outer runs likewise, which is the other way along the wall. */
const SIDES: readonly Side[] = [
  {
    name: "s",
    ...short,
    inner: ["C", 150, 600, 600, "D", 450, "C"],
    outer: [250, 450, "D", 600, 600, 150, 250],
    room: ["se", "sw"],
  },
  {
    name: "w",
    ...long,
    inner: ["C", 600, 600, 600, 600, 600, 300, "C"],
    outer: [250, 300, 600, 600, 600, 600, 600, 250],
    room: ["sw", "nw"],
  },
  {
    name: "n",
    ...short,
    inner: ["C", 600, 600, 600, 600, 300, "C"],
    outer: [250, 300, 600, 600, 600, 600, 250],
    room: ["nw", "ne"],
  },
  {
    name: "e",
    ...long,
    inner: ["C", 300, 600, 600, 600, 600, 600, "C"],
    outer: [250, 600, 600, 600, 600, 600, 300, 250],
    room: ["ne", "se"],
  },
];

function leg(corner: Corner, x: number): FacePiece {
  const place = { z: 0, width: 150, height: PANEL, x };
  return { piece: `A/c-${corner}`, code: "Corner150", family: "inside-corner", ...place };
}

function panel(id: string, x: number, width: number, isZone: boolean): FacePiece {
  const plain = {
    piece: id,
    code: `P${width}`,
    family: "wall-panel",
    x,
    z: 0,
    width,
    height: PANEL,
  } as const;
  if (isZone) return { ...plain, zone: true };
  return width === 600 ? plain : { ...plain, reason: "closes the run" };
}

function lay(side: Side, run: readonly Part[], place: "in" | "out"): Pick<FilledFace, "pieces" | "openings"> {
  const pieces: FacePiece[] = [];
  const openings: FilledFace["openings"][number][] = [];
  let x = 0;
  run.forEach((part, index) => {
    if (part === "D") {
      openings.push({ ...DOOR, x });
      const lintel = {
        piece: `A/${side.name}-${place}-lintel`,
        code: "P900x150",
        family: "wall-panel",
      } as const;
      pieces.push({ ...lintel, x, z: DOOR.head, width: DOOR.width, height: PANEL - DOOR.head });
      x += DOOR.width;
    } else if (part === "C") {
      pieces.push(leg(side.room[index === 0 ? 0 : 1], x));
      x += 150;
    } else {
      const isZone = place === "out" && (index === 0 || index === run.length - 1);
      pieces.push(panel(`A/${side.name}-${place}-${index}`, x, part, isZone));
      x += part;
    }
  });
  const narrowest = side.name === "s" ? 150 : 300;
  const marked = pieces.map((piece) =>
    place === "in" && piece.code === `P${narrowest}` ? { ...piece, firstOut: true as const } : piece,
  );
  return { pieces: [...marked, ...head(side, x, place)], openings };
}

/** Connectors between their corners inside, caps from corner to corner outside. */
function head(side: Side, length: number, place: "in" | "out"): readonly FacePiece[] {
  const height = place === "in" ? 150 : 250;
  const [family, code]: [Family, string] =
    place === "in" ? ["wall-slab-connector", "Conn"] : ["slab-edge-cap", "Cap"];
  let x = place === "in" ? 150 : 0;
  const straight = (place === "in" ? side.connectors : side.caps).map((width, index): FacePiece => {
    const piece = { piece: `A/${side.name}-${place}-h${index}`, code: `${code}${width}`, family };
    x += width;
    return { ...piece, x: x - width, z: PANEL, width, height };
  });
  if (place === "out") return straight;
  const corner = (name: Corner, at: number): FacePiece => ({
    piece: `A/k-${name}`,
    code: "ConnCorner",
    family: "connector-corner",
    x: at,
    z: PANEL,
    width: 150,
    height,
  });
  return [corner(side.room[0], 0), ...straight, corner(side.room[1], length - 150)];
}

function faces(): readonly FilledFace[] {
  return SIDES.flatMap((side): FilledFace[] => {
    const [from, to] = side.room;
    const inner = lay(side, side.inner, "in");
    const outer = lay(side, side.outer, "out");
    const isLong = side.name === "e" || side.name === "w";
    const plain = { walls: [side.name], unfilled: [] };
    const room = {
      id: `A/${side.name}-in`,
      room: "Bedroom 2",
      from: INNER[from],
      to: INNER[to],
      height: 2400,
    };
    const outside = { id: `A/${side.name}-out`, room: null, from: OUTER[to], to: OUTER[from], height: 2500 };
    return [
      { ...plain, ...room, settled: [room.from, room.to], ...inner, length: isLong ? 3600 : 3000 },
      { ...plain, ...outside, settled: [outside.from, outside.to], ...outer, length: isLong ? 3800 : 3200 },
    ];
  });
}

/** Ties at every joint of the inner runs that is not a jamb. */
function ties(): readonly TieLine[] {
  return SIDES.flatMap((side) => {
    const [from, to] = side.room.map((corner) => INNER[corner]) as [[number, number], [number, number]];
    const length = Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]);
    const unit = [(to[0] - from[0]) / length, (to[1] - from[1]) / length] as const;
    const lines: TieLine[] = [];
    let x = 0;
    side.inner.forEach((part, index) => {
      x += part === "C" ? 150 : part === "D" ? DOOR.width : part;
      const next = side.inner[index + 1];
      if (next === undefined || part === "D" || next === "D") return;
      const at = [from[0] + unit[0] * x - unit[1] * 50, from[1] + unit[1] * x + unit[0] * 50] as const;
      const faceIds = [`A/${side.name}-in`, `A/${side.name}-out`] as const;
      lines.push({ at, heights: ROWS, faces: faceIds, length: 100, code: "Tie100" });
    });
    return lines;
  });
}

function edges(): readonly EdgePiece[] {
  const upright = (piece: string, [x, y]: readonly [number, number], length: number): EdgePiece => {
    const ends = { from: [x, y, 0], to: [x, y, length] } as const;
    return { piece, code: `Angle${length}`, family: "outside-corner", ...ends };
  };
  const lintel = (piece: string, y: number): EdgePiece => {
    const ends = { from: [700, y, 2100], to: [1600, y, 2100] } as const;
    return { piece, code: "Angle900", family: "outside-corner", ...ends };
  };
  const corners = (Object.keys(OUTER) as Corner[]).flatMap((name) => [
    upright(`A/o-${name}`, OUTER[name], PANEL),
    capCorner(name),
  ]);
  const jambs = [700, 1600].flatMap((x) => [0, 100].map((y) => upright(`A/j-${x}-${y}`, [x, y], 2100)));
  return [...corners, ...jambs, lintel("A/l-in", 100), lintel("A/l-out", 0)];
}

function capCorner(name: Corner): EdgePiece {
  const [x, y] = OUTER[name];
  return {
    piece: `A/q-${name}`,
    code: "CapCorner",
    family: "cap-corner",
    from: [x, y, PANEL],
    to: [x, y, 2500],
  };
}

function reveals(): UnitFill["reveals"] {
  const jamb = (side: "left" | "right") => ({
    opening: "d1",
    side,
    pieces: [
      {
        piece: `A/r-${side}`,
        code: "Jamb2100",
        family: "stop-end" as const,
        at: 0,
        length: 2100,
        width: 100,
      },
    ],
  });
  const soffit = {
    piece: "A/r-head",
    code: "Reveal900",
    family: "reveal-closure" as const,
    at: 0,
    length: 900,
  };
  return [jamb("left"), jamb("right"), { opening: "d1", side: "head", pieces: [{ ...soffit, width: 100 }] }];
}

/** The unit, with what the test wants otherwise laid over it. */
export function oneRoomFill(members: Partial<UnitFill> = {}): UnitFill {
  const laid = faces();
  const inner = laid.filter((face) => face.room !== null).map(({ id }) => id);
  return unitEntry({
    rooms: [{ name: "Bedroom 2", kind: "room", area: 10.8, faces: inner }],
    faces: laid,
    corners: edges(),
    reveals: reveals(),
    ties: ties(),
    ...members,
  });
}

/** What the sheets of that unit say beside the fill: 22 kg/m² and a limit of 25 kg. */
export function oneRoomInfo(members: Partial<SheetInfo> = {}): SheetInfo {
  const panels = [600, 450, 300, 250, 150].map((width) => {
    const mass = (width * PANEL * 22) / 1e6;
    return [`P${width}`, { mass, standard: width === 600, size: `${width} × ${PANEL}` }] as const;
  });
  return {
    language: "en",
    paper: "A4",
    project: "Seven Kilns",
    revision: "B",
    unitName: "A",
    storey: { clearHeight: 2400, slab: 100 },
    pours: [{ id: "p1", name: "Level 1 west", mirror: false }],
    pieces: Object.fromEntries(panels),
    thickness: { s: 100, e: 100, n: 100, w: 100 },
    personLimit: 25,
    frameDepth: 65,
    pins: { pitch: 300, holes: { first: 150, pitch: 300 } },
    tieRows: ROWS,
    document: "SK-A-R01",
    date: "2026-02-17",
    madeBy: "Layout office",
    checkedBy: "",
    releasedBy: "",
    ...members,
  };
}
