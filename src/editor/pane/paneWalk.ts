// Walking the elevation by keys: from face to interval to piece and back, and from one to the next on each level.

import type { FilledUnit } from "../../fill/fillWalls.ts";
import { type SeenStretch, stretchesSeen } from "../../fill/stretchPieces.ts";
import type { Kit } from "../../kit/kit.ts";
import { type DrawnFace, type DrawnPart, drawnFace, ringOf } from "./elevation.ts";
import type { PaneFocus } from "./paneFocus.ts";

/** A focus with what it means in a fill. */
export interface Focused {
  readonly focus: PaneFocus;
  readonly drawn: DrawnFace;
  /** Of the whole ring, left to right. */
  readonly ring: readonly number[];
  readonly stretches: readonly SeenStretch[];
  /** The stretch the hand is on or in; null in corners and openings. */
  readonly seen: SeenStretch | null;
  /** The part the hand is on; null on the levels above. */
  readonly part: DrawnPart | null;
}

export function focused(focus: PaneFocus, filled: FilledUnit, kit: Kit): Focused | null {
  const index = filled.fill.faces.findIndex(({ id }) => id === focus.face);
  if (index < 0) return null;
  const drawn = drawnFace(filled, kit, index);
  const stretches = stretchesSeen(filled, index);
  const holds = ({ x, length }: SeenStretch) => x <= focus.x && focus.x < x + length;
  const seen = focus.level === "face" ? null : (stretches.find(holds) ?? null);
  const part = focus.level === "piece" ? partAt(drawn.parts, focus) : null;
  return { focus, drawn, ring: ringOf(filled, index), stretches, seen, part };
}

export function partAt(
  parts: readonly DrawnPart[],
  at: { readonly x: number; readonly z: number },
): DrawnPart | null {
  return (
    parts.find(
      ({ x, z, width, height }) => x <= at.x && at.x < x + width && z <= at.z && at.z < z + height,
    ) ?? null
  );
}

/** One step sideways on the level the hand is on. The same focus back where there is nowhere to go. */
export function stepAside(now: Focused, way: 1 | -1, filled: FilledUnit): PaneFocus {
  const { focus, drawn, ring, stretches, part } = now;
  switch (focus.level) {
    case "face": {
      const next = ring[(ring.indexOf(drawn.index) + way + ring.length) % ring.length];
      const face = next === undefined ? undefined : filled.fill.faces[next];
      return face === undefined ? focus : { ...focus, face: face.id, x: 0, z: 0 };
    }
    case "stretch": {
      const next =
        way > 0
          ? stretches.find(({ x }) => x > focus.x)
          : stretches.findLast(({ x, length }) => x + length <= focus.x);
      return next === undefined ? focus : { ...focus, x: next.x, z: 0 };
    }
    case "piece": {
      const next = part === null ? undefined : drawn.parts[drawn.parts.indexOf(part) + way];
      return next === undefined ? focus : { ...focus, x: next.x, z: next.z };
    }
    case "tie": {
      const { ties } = drawn;
      const next = way > 0 ? ties.find(({ x }) => x > focus.x) : ties.findLast(({ x }) => x < focus.x);
      return next === undefined ? focus : { ...focus, x: next.x };
    }
    default:
      return focus.level satisfies never;
  }
}

/** One level deeper: into the first interval of a face, the first piece of an interval. */
export function stepIn({ focus, stretches, seen, drawn }: Focused): PaneFocus {
  if (focus.level === "face") {
    const [first] = stretches;
    if (first !== undefined) return { ...focus, level: "stretch", x: first.x, z: 0 };
    const [part] = drawn.parts;
    return part === undefined ? focus : { ...focus, level: "piece", x: part.x, z: part.z };
  }
  if (focus.level === "stretch") return { ...focus, level: "piece", x: seen?.x ?? focus.x, z: 0 };
  return focus;
}

/** One level out. */
export function stepOut({ focus, seen }: Focused): PaneFocus {
  if (focus.level === "piece" || focus.level === "tie")
    return seen === null ? { ...focus, level: "face" } : { ...focus, level: "stretch", x: seen.x, z: 0 };
  return focus.level === "stretch" ? { ...focus, level: "face" } : focus;
}
