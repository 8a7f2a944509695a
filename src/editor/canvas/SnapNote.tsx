// Why the hand was taken where it is, in words beside the place, and how to be free of it.

import { useSpeech } from "../live/useWorkbench.tsx";
import { toScreen, type Viewport } from "../scene/viewport.ts";
import type { Mark } from "../tools/protocol.ts";
import { words } from "../words/say.ts";

export function SnapNote({ marks, viewport }: { marks: readonly Mark[]; viewport: Viewport }) {
  const { t } = useSpeech();
  const mark = marks.find(({ kind }) => kind === "snap");
  // The grid is met everywhere: its dot is enough.
  if (mark?.kind !== "snap" || mark.reason.kind === "grid") return null;
  const [x, y] = toScreen(viewport, mark.reason.to);
  const left = Math.min(x + 18, viewport.width - 300);
  return (
    <div className="snap-note" style={{ left, top: y + 16 }} data-snap={mark.reason.kind}>
      <b>{t(mark.reason.said)}</b>
      <span>{t(words("snap.free"))}</span>
    </div>
  );
}
