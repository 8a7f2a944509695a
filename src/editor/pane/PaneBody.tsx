// The body of the pane: the room unfolded, and beside it the covers on offer for the interval in hand.

import { useSpeech } from "../live/useWorkbench.tsx";
import { words } from "../words/say.ts";
import { CoverList } from "./CoverList.tsx";
import { Elevation } from "./Elevation.tsx";
import type { PaneView } from "./usePane.ts";

export interface PaneBodyProps {
  readonly view: PaneView | null;
  /** Px. */
  readonly height: number;
  readonly onAsk: () => void;
}

export function PaneBody({ view, height, onAsk }: PaneBodyProps) {
  const { t } = useSpeech();
  return (
    <div className="pane-body" style={{ height }}>
      {view === null ? (
        <p className="covers-nothing">{t(words("pane.no-face"))}</p>
      ) : (
        <>
          <Elevation view={view} height={height - 1} onAsk={onAsk} />
          <CoverList view={view} />
        </>
      )}
    </div>
  );
}
