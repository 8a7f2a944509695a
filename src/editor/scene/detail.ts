// What is drawn at which zoom: the nearer, the more. Below a level's scale (px per mm) the one above it in the list holds.

export type Level = "unit" | "plan" | "room" | "wall" | "joint";

export interface Detail {
  readonly level: Level;
  /** Edge of the concrete, px. */
  readonly edge: number;
  readonly pieces: boolean;
  readonly joints: boolean;
  /** Widths of fillers and closures; those of the selected wall show wherever there are pieces. */
  readonly fillerWidths: boolean;
  readonly jambs: boolean;
  readonly standardWidths: boolean;
  readonly ties: boolean;
  readonly hatch: boolean;
  /** Frames of panels, sizes of corners and jambs, names of walls. */
  readonly frames: boolean;
}

const LEVELS: readonly (readonly [least: number, detail: Detail])[] = [
  [0.5, detailOf("joint", 2, 8)],
  [0.25, detailOf("wall", 1.6, 7)],
  [0.055, detailOf("room", 1.25, 4)],
  [0.03, detailOf("plan", 1.1, 1)],
];
const FAR = detailOf("unit", 0.8, 0);

function detailOf(level: Level, edge: number, steps: number): Detail {
  return {
    level,
    edge,
    pieces: steps >= 1,
    joints: steps >= 2,
    fillerWidths: steps >= 3,
    jambs: steps >= 4,
    standardWidths: steps >= 5,
    ties: steps >= 6,
    hatch: steps >= 7,
    frames: steps >= 8,
  };
}

/** @param scale - px per mm */
export function detailAt(scale: number): Detail {
  return LEVELS.find(([least]) => scale >= least)?.[1] ?? FAR;
}
