// Small print on the plan: scale bar at the left; where the pointer is, how lines run, the grid, the zoom at the right.

import { useSyncExternalStore } from "react";
import type { LiveFill } from "../live/liveFill.ts";
import { useBench, useEditorState, useInView, useSpeech } from "../live/useWorkbench.tsx";
import { soffitThing } from "../scene/soffitHit.ts";
import { formatNumber } from "../words/numbers.ts";
import { words } from "../words/say.ts";
import { useProblemText } from "./useProblemText.ts";

const BAR_LENGTHS: readonly number[] = [100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000];
const LONGEST_BAR = 190; // px

export function Readouts() {
  const { session } = useEditorState();
  const { t, speech } = useSpeech();
  const { settings, view } = session;
  const fitting = BAR_LENGTHS.filter((length) => length * view.scale <= LONGEST_BAR);
  const bar = fitting.at(-1) ?? 100;
  const isMetres = bar >= 1000;
  const size = formatNumber(isMetres ? bar / 1000 : bar, speech.language, 1);
  const perPixel = formatNumber(1 / view.scale, speech.language, view.scale > 0.4 ? 1 : 0);
  return (
    <div className="readouts">
      <div className="scale-bar" style={{ width: bar * view.scale }}>
        <span>{`${size}\u202f${isMetres ? "m" : "mm"}`}</span>
      </div>
      <div className="readout">
        <PieceNote />
        <PointerPlace />
        <span>{t(words(settings.ortho ? "readout.ortho" : "readout.free"))}</span>
        <span>
          {settings.snapping
            ? t(words("readout.grid", { step: settings.grid }))
            : t(words("readout.no-snap"))}
        </span>
        <span>{t(words("readout.scale", { mm: perPixel }))}</span>
      </div>
    </div>
  );
}

// The piece under the pointer, and why it is there where that needs a reason.
function PieceNote() {
  const { session } = useEditorState();
  const { live } = useInView();
  const told = useProblemText();
  const id = session.hoveredPiece;
  if (live === null || id === null) return null;
  const piece = live.fill.faces.flatMap(({ pieces }) => pieces).find((each) => each.piece === id);
  if (piece === undefined) return <SoffitNote live={live} id={id} />;
  return (
    <span className="piece-note" data-piece={id}>
      <b>{piece.code}</b> {told(piece.reason ?? "")}
    </span>
  );
}

function SoffitNote({ live, id }: { live: LiveFill; id: string }) {
  const thing = soffitThing(live, id);
  const piece = thing === null ? null : thing.kind === "prop" ? thing.place.prop : thing.shape.piece;
  if (piece === null) return null;
  return (
    <span className="piece-note" data-piece={id}>
      <b>{piece.code}</b>
    </span>
  );
}

function PointerPlace() {
  const { pointer } = useBench();
  const { t } = useSpeech();
  const { at } = useSyncExternalStore(pointer.subscribe, pointer.get);
  if (at === null) return null;
  return (
    <span className="pointer-place">
      {t(words("readout.at", { x: Math.round(at[0]), y: Math.round(at[1]) }))}
    </span>
  );
}
