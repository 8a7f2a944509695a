// The ring of faces unfolded left to right, the face in hand in full ink. One drawing that takes the pointer and keys.

import { type KeyboardEvent, type MouseEvent, useEffect, useMemo, useRef } from "react";
import type { FaceOpening } from "../../fill/result.ts";
import type { Mm } from "../../units.ts";
import { useBench, useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { withSession } from "../state/editorState.ts";
import { words } from "../words/say.ts";
import { boxOf, ElevationFace, type FacePlace } from "./ElevationFace.tsx";
import { type DrawnFace, drawnFace } from "./elevation.ts";
import { putFocus } from "./paneActions.ts";
import type { PaneFocus } from "./paneFocus.ts";
import { type Focused, stepAside, stepIn, stepOut } from "./paneWalk.ts";
import { faceWords, focusText } from "./paneWords.ts";
import type { PaneView } from "./usePane.ts";

const OVER = 14; // px over the faces, for widths that stand above them
const UNDER = 17; // px under the floor, for ticks
const GAP = 8; // px between faces
const SIDE = 14;
const LEAST_SCALE = 0.02;
const FIGURE = 6.4; // px of one figure of a tick
const TICK_GAP = 5;

interface Placed {
  readonly drawn: DrawnFace;
  readonly place: FacePlace;
}

export interface ElevationProps {
  readonly view: PaneView;
  readonly height: number;
  /** The reason of what the hand is on is wanted. */
  readonly onAsk: () => void;
}

export function Elevation({ view, height, onAsk }: ElevationProps) {
  const bench = useBench();
  const { hoveredPiece } = useEditorState().session;
  const { speech, t } = useSpeech();
  const host = useRef<HTMLDivElement>(null);
  const { given, now, numbers } = view;
  const { filled, kit } = given;
  const faces = useMemo(() => {
    const drawn = now.ring.map((index) => drawnFace(filled, kit, index));
    return placeFaces(drawn, height);
  }, [now.ring, filled, kit, height]);
  const chosen = faces.find(({ drawn }) => drawn.index === now.drawn.index);
  useInSight(host, chosen);
  const openingName = useMemo(
    () => (opening: FaceOpening) => t(words(opening.sill === 0 ? "pane.door" : "pane.window")),
    [t],
  );
  const focusAt = (event: MouseEvent): PaneFocus | null => focusUnder(event, view);
  const hover = (id: string | null) =>
    bench.editor.set((state) =>
      state.session.hoveredPiece === id ? state : withSession(state, { hoveredPiece: id }),
    );
  const go = (focus: PaneFocus) => {
    const walls = filled.fill.faces.find(({ id }) => id === focus.face)?.walls ?? [];
    putFocus(bench, focus, walls);
  };
  const last = faces.at(-1);
  const width = last === undefined ? 0 : last.place.left + last.drawn.face.length * last.place.scale + 56;
  return (
    <div
      className="elevation"
      ref={host}
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing takes keys of its own, as an application does
      tabIndex={0}
      aria-label={t(words("pane.label"))}
      data-level={now.focus.level}
      onKeyDown={(event) => {
        const next = nextFocus(event, now, view);
        if (next === null) return;
        event.preventDefault();
        event.stopPropagation();
        if (next === "ask") onAsk();
        else go(next);
      }}
      onPointerOver={(event) => hover(pieceUnder(event.target))}
      onPointerLeave={() => hover(null)}
    >
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the keys are those of the drawing around it */}
      <svg
        width={width}
        height={height}
        role="img"
        aria-label={t(faceWords(now.drawn))}
        onClick={(event) => {
          const focus = focusAt(event);
          if (focus === null) return;
          const isAgain = focus.level !== "face" && focus.face === now.focus.face;
          go(focus);
          if (isAgain || focus.level === "tie") onAsk();
        }}
      >
        <Hatch />
        {faces.map(({ drawn, place }) => (
          <ElevationFace
            key={drawn.face.id}
            drawn={drawn}
            place={place}
            isChosen={drawn.index === now.drawn.index}
            hovered={hoveredPiece}
            numbers={numbers}
            write={speech.write}
            openingName={openingName}
          />
        ))}
        {faces.map((face) =>
          face === chosen ? (
            <Ticks key={face.drawn.face.id} {...face} write={speech.write} />
          ) : (
            <text key={face.drawn.face.id} className="el-name" x={middleOf(face)} y={face.place.floor + 12}>
              {nameThatFits(face, t(faceWords(face.drawn)), speech.write)}
            </text>
          ),
        )}
        {chosen === undefined ? null : <Chosen now={now} place={chosen.place} />}
        {last === undefined ? null : <Heights {...last} write={speech.write} />}
      </svg>
      <output className="hidden">{focusText(now, speech, numbers)}</output>
    </div>
  );
}

function placeFaces(drawn: readonly DrawnFace[], height: number): readonly Placed[] {
  const tallest = Math.max(1, ...drawn.map(({ face }) => face.height));
  const scale = Math.max(LEAST_SCALE, (height - OVER - UNDER) / tallest);
  let left = SIDE;
  return drawn.map((each): Placed => {
    const place = { left, floor: OVER + tallest * scale, scale };
    left += each.face.length * scale + GAP;
    return { drawn: each, place };
  });
}

// The face in hand stays in sight while the hand walks round the room.
function useInSight(host: { readonly current: HTMLDivElement | null }, chosen: Placed | undefined): void {
  const left = chosen?.place.left ?? 0;
  const right = left + (chosen?.drawn.face.length ?? 0) * (chosen?.place.scale ?? 0);
  useEffect(() => {
    const { current } = host;
    if (current === null) return;
    if (left < current.scrollLeft || right > current.scrollLeft + current.clientWidth)
      current.scrollLeft = Math.max(0, Math.min(left - SIDE, (left + right - current.clientWidth) / 2));
  }, [host, left, right]);
}

function nextFocus(event: KeyboardEvent, now: Focused, { given }: PaneView): PaneFocus | "ask" | null {
  if (event.ctrlKey || event.metaKey || event.altKey) return null;
  const { focus } = now;
  switch (event.key) {
    case "ArrowLeft":
      return stepAside(now, -1, given.filled);
    case "ArrowRight":
      return stepAside(now, 1, given.filled);
    case "ArrowDown":
      return stepIn(now);
    case "ArrowUp":
      return stepOut(now);
    case "Enter":
      return focus.level === "piece" || focus.level === "tie" ? "ask" : stepIn(now);
    case "Escape":
      return focus.level === "face" ? null : stepOut(now);
    case "Tab": {
      // In as far as it goes and out again, then on to the next part of the page.
      const next = event.shiftKey ? stepOut(now) : stepIn(now);
      return next === focus ? null : next;
    }
    default:
      return null;
  }
}

function pieceUnder(target: EventTarget): string | null {
  return target instanceof Element
    ? (target.closest("[data-piece]")?.getAttribute("data-piece") ?? null)
    : null;
}

// A face not in hand is taken as a whole first; a second click goes to the piece under it.
function focusUnder({ target }: MouseEvent, { now }: PaneView): PaneFocus | null {
  if (!(target instanceof Element)) return null;
  const face = target.closest("[data-face]")?.getAttribute("data-face") ?? null;
  if (face === null) return null;
  const { unit } = now.focus;
  if (face !== now.focus.face) return { unit, face, level: "face", x: 0, z: 0 };
  const tie = target.closest("[data-tie]")?.getAttribute("data-tie");
  if (tie !== null && tie !== undefined) return { unit, face, level: "tie", x: Number(tie), z: 0 };
  const part = target.closest("[data-piece]");
  if (part === null) return { unit, face, level: "face", x: 0, z: 0 };
  const [x, z] = [Number(part.getAttribute("data-x")), Number(part.getAttribute("data-z"))];
  return { unit, face, level: "piece", x, z };
}

function middleOf({ drawn, place }: Placed): number {
  return place.left + (drawn.face.length * place.scale) / 2;
}

function nameThatFits({ drawn, place }: Placed, name: string, write: (value: Mm) => string): string {
  const room = drawn.face.length * place.scale;
  const full = `${name}, ${write(drawn.face.length)}`;
  if (full.length * 5.6 <= room) return full;
  const short = `${drawn.face.walls[0] ?? ""}, ${write(drawn.face.length)}`;
  return short.length * 5.6 <= room ? short : "";
}

function Hatch() {
  return (
    <defs>
      <pattern id="el-hatch" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="4" height="4" className="el-hatch-ground" />
        <rect width="1.4" height="4" className="el-hatch-line" />
      </pattern>
    </defs>
  );
}

// The outline of the face in hand, of the stretch and of the piece in it.
function Chosen({ now, place }: { now: Focused; place: FacePlace }) {
  const { drawn, seen, part, focus } = now;
  const whole = boxOf({ x: 0, z: 0, width: drawn.face.length, height: drawn.face.height }, place);
  const top = drawn.stack.filter(({ kind }) => kind === "row").reduce((sum, { height }) => sum + height, 0);
  return (
    <g className="el-chosen">
      <rect {...whole} />
      {seen === null ? null : (
        <rect className="inner" {...boxOf({ x: seen.x, z: 0, width: seen.length, height: top }, place)} />
      )}
      {part === null ? null : <rect className="deep" {...boxOf(part, place)} />}
      {focus.level === "tie" ? (
        <line
          x1={place.left + focus.x * place.scale}
          x2={place.left + focus.x * place.scale}
          y1={whole.y}
          y2={place.floor}
        />
      ) : null}
    </g>
  );
}

function Ticks({ drawn, place, write }: Placed & { readonly write: (value: Mm) => string }) {
  const { left, floor, scale } = place;
  const width = (at: Mm) => write(at).length * FIGURE;
  let reached = Number.NEGATIVE_INFINITY;
  const end = left + drawn.face.length * scale;
  const shown = drawn.joints.filter((at, k) => {
    const x = left + at * scale;
    const isLast = k === drawn.joints.length - 1;
    const fits =
      x - width(at) / 2 >= reached &&
      (isLast || x + width(at) / 2 <= end - width(drawn.face.length) / 2 - TICK_GAP);
    if (fits || isLast) reached = x + width(at) / 2 + TICK_GAP;
    return fits || isLast;
  });
  return (
    <g className="el-ticks">
      {drawn.joints.map((at) => (
        <line key={at} x1={left + at * scale} x2={left + at * scale} y1={floor} y2={floor + 4} />
      ))}
      {shown.map((at) => (
        <text key={at} x={left + at * scale} y={floor + 14}>
          {write(at)}
        </text>
      ))}
    </g>
  );
}

// The heights that make up the last face, beside it.
function Heights({ drawn, place, write }: Placed & { readonly write: (value: Mm) => string }) {
  const x = place.left + drawn.face.length * place.scale + 10;
  let z = 0;
  return (
    <g className="el-heights">
      {drawn.stack.map(({ height, kind }, k) => {
        const low = place.floor - z * place.scale;
        z += height;
        const high = place.floor - z * place.scale;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows of a stack are told apart by their order alone
          <g key={`${kind} ${k}`}>
            <path d={`M${x} ${low}V${high}M${x - 3} ${low + 3}l6 -6M${x - 3} ${high + 3}l6 -6`} />
            <text x={x + 7} y={(low + high) / 2}>
              {write(height)}
            </text>
          </g>
        );
      })}
    </g>
  );
}
