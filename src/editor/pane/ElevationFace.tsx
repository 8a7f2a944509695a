// One face of the elevation: its pieces to scale, ties, joints and openings. Px of the drawing; the floor is at `floor`.

import { memo, type ReactNode } from "react";
import type { FaceOpening } from "../../fill/result.ts";
import type { Mm } from "../../units.ts";
import { fillerToken, inkOnFillerRule } from "../theme/palette.ts";
import type { DrawnFace, DrawnPart, DrawnTie } from "./elevation.ts";

/** Where a face stands in the drawing. */
export interface FacePlace {
  readonly left: number;
  readonly floor: number;
  /** Px per mm. */
  readonly scale: number;
}

export interface ElevationFaceProps {
  readonly drawn: DrawnFace;
  readonly place: FacePlace;
  readonly isChosen: boolean;
  readonly hovered: string | null;
  readonly numbers: readonly number[];
  readonly write: (value: Mm) => string;
  readonly openingName: (opening: FaceOpening) => string;
}

const LEAST_STRIP = 3; // px: a closure is never lost
const FIGURE = 6.2; // px, one figure at 10.5 px
const LEAST_LABEL = 9; // px across, for a figure turned upright
const TWO_FROM = 14; // px wide from which the second outline shows
const INSET = 2.5; // px

/** Pieces carry `data-piece`, ties `data-tie`: the drawing listens as a whole. */
export const ElevationFace = memo(function ElevationFace(props: ElevationFaceProps) {
  const { drawn, place, isChosen, hovered, openingName } = props;
  const { left, floor, scale } = place;
  const { face, parts, openings, ties } = drawn;
  const lit = parts.filter(({ id }) => id === hovered);
  return (
    <g className={isChosen ? "el-face chosen" : "el-face"} data-face={face.id}>
      {parts.map((part) => (
        <Part key={`${part.id} ${part.x} ${part.z}`} part={part} {...props} />
      ))}
      {openings.map((opening) => (
        <Opening key={opening.id} opening={opening} place={place} name={openingName(opening)} />
      ))}
      {isChosen
        ? ties.map((tie) => <Tie key={`${tie.x} ${tie.heights[0]}`} tie={tie} place={place} />)
        : null}
      <rect
        className="el-edge"
        x={left}
        y={floor - face.height * scale}
        width={face.length * scale}
        height={face.height * scale}
      />
      {lit.map((part) => (
        <rect key={`${part.x} ${part.z}`} className="el-lit" {...boxOf(part, place)} />
      ))}
    </g>
  );
});

/** The rectangle of a part, px. */
export function boxOf(
  { x, z, width, height }: Pick<DrawnPart, "x" | "z" | "width" | "height">,
  { left, floor, scale }: FacePlace,
) {
  return {
    x: left + x * scale,
    y: floor - (z + height) * scale,
    width: width * scale,
    height: height * scale,
  };
}

function Part({
  part,
  place,
  isChosen,
  numbers,
  write,
}: ElevationFaceProps & { readonly part: DrawnPart }): ReactNode {
  const box = boxOf(part, place);
  const isStrip = part.kind === "closure";
  const drawn = isStrip && box.width < LEAST_STRIP ? { ...box, width: LEAST_STRIP } : box;
  const filler = part.kind === "filler" ? fillerToken(part.width) : null;
  return (
    <g className={`el-part el-${part.kind}`} data-piece={part.id} data-x={part.x} data-z={part.z}>
      <rect {...drawn} style={filler === null ? undefined : { fill: `var(--${filler})` }} />
      {part.needsTwo && box.width >= TWO_FROM ? <rect className="el-two" {...inset(box)} /> : null}
      {part.isFirstOut ? <path className="el-notch" d={notch(box)} /> : null}
      {part.kind === "unfilled" ? (
        <Ring box={box} text={`${numbers[part.problem ?? -1] ?? ""}`} />
      ) : (
        <Width part={part} box={box} text={write(part.width)} isChosen={isChosen} />
      )}
    </g>
  );
}

type Box = ReturnType<typeof boxOf>;

function inset({ x, y, width, height }: Box): Box {
  return { x: x + INSET, y: y + INSET, width: width - 2 * INSET, height: Math.max(0, height - 2 * INSET) };
}

function notch({ x, y, width, height }: Box): string {
  const half = Math.max(2, Math.min(4, width / 2 - 1));
  const middle = x + width / 2;
  return `M${middle - half} ${y + height}h${2 * half}l${-half} ${-1.5 * half}z`;
}

// Level where it fits, upright where only that does. On narrow fillers and strips it stands over the face, and then
// only of the face in hand.
function Width({
  part,
  box,
  text,
  isChosen,
}: {
  part: DrawnPart;
  box: Box;
  text: string;
  isChosen: boolean;
}): ReactNode {
  if (part.kind === "band" || part.kind === "stop-end") return null;
  const middle = box.x + box.width / 2;
  const isLevel = text.length * FIGURE + 3 <= box.width;
  const isUpright = box.width >= LEAST_LABEL && box.height >= text.length * FIGURE + 4;
  if (!isLevel && !isUpright) {
    const isNamed = isChosen && part.z === 0 && (part.kind === "closure" || part.kind === "filler");
    if (!isNamed) return null;
    return (
      <text className="el-over" x={middle} y={box.y - 3} data-over="">
        {text}
      </text>
    );
  }
  const y = box.y + box.height / 2;
  const turn = isLevel ? undefined : `rotate(-90 ${middle} ${y})`;
  const ink = part.kind === "filler" ? { fill: inkOnFillerRule(part.width) } : undefined;
  return (
    <text className="el-width" x={middle} y={y} transform={turn} style={ink}>
      {text}
    </text>
  );
}

function Ring({ box, text }: { box: Box; text: string }) {
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return (
    <>
      <circle className="el-ring" cx={x} cy={y} r="8.5" />
      <circle className="el-ring" cx={x} cy={y} r="6" />
      <text className="el-ring-text" x={x} y={y}>
        {text}
      </text>
    </>
  );
}

function Opening({ opening, place, name }: { opening: FaceOpening; place: FacePlace; name: string }) {
  const { x, sill, head, width, formed } = opening;
  const box = boxOf({ x, z: sill, width, height: head - sill }, place);
  const middle = box.x + box.width / 2;
  const isRoomy = box.width > 7 * name.length * 0.85 && box.height > 16;
  return (
    <g className={`el-opening ${formed}`}>
      <rect {...box} />
      {isRoomy ? (
        <text x={middle} y={box.y + box.height / 2}>
          {name}
        </text>
      ) : null}
    </g>
  );
}

function Tie({ tie, place }: { tie: DrawnTie; place: FacePlace }) {
  const x = place.left + tie.x * place.scale;
  return (
    <g className="el-tie" data-tie={tie.x}>
      {tie.heights.map((height) => (
        <circle key={height} cx={x} cy={place.floor - height * place.scale} r="1.7" />
      ))}
      {tie.heights.map((height) => (
        <circle key={height} className="el-grip" cx={x} cy={place.floor - height * place.scale} r="3" />
      ))}
    </g>
  );
}
