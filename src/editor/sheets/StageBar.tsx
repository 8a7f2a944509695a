// Over the preview: which sheet it is, to the one before and the one behind, how large it is shown.

import type { ReactNode } from "react";
import { useSpeech } from "../live/useWorkbench.tsx";
import { formatNumber } from "../words/numbers.ts";
import { paperOf } from "./sheetList.ts";
import type { Hand } from "./useHand.ts";
import { useSheetWords } from "./useSheetWords.ts";
import type { Zoom } from "./useZoom.ts";
import type { SheetsWord } from "./words.ts";

export function StageBar({ hand, zoom }: { hand: Hand; zoom: Zoom }) {
  const w = useSheetWords();
  const { speech } = useSpeech();
  const { sheet, place, count, walk } = hand;
  if (sheet === null) return <div className="stage-bar" />;
  const { width, height } = sheet;
  return (
    <div className="stage-bar">
      <IconButton name="previous" chord="PgUp" isOff={place === 0} onClick={() => walk(-1)}>
        <path d="M12 4.5L6.5 10l5.5 5.5" />
      </IconButton>
      <IconButton name="next" chord="PgDn" isOff={place === count - 1} onClick={() => walk(1)}>
        <path d="M8 4.5l5.5 5.5L8 15.5" />
      </IconButton>
      <p className="stage-title" role="status">
        <b>{sheet.title}</b>{" "}
        <small>
          {w("place", { number: place + 1, count })}
          <span>
            {paperOf(sheet)} {w("size", { width, height })}
          </span>
        </small>
      </p>
      <span className="stage-zoom">
        <IconButton name="zoom-out" chord={"\u2212"} isOff={false} onClick={zoom.zoomOut}>
          <path d="M5 10h10" />
        </IconButton>
        <output>{formatNumber(zoom.scale * 100, speech.language)} %</output>
        <IconButton name="zoom-in" chord="+" isOff={false} onClick={zoom.zoomIn}>
          <path d="M5 10h10M10 5v10" />
        </IconButton>
        <IconButton name="fit" chord="0" isOff={false} isOn={zoom.isFitted} onClick={zoom.fit}>
          <path d="M3.5 7V3.5H7M13 3.5h3.5V7M16.5 13v3.5H13M7 16.5H3.5V13" />
        </IconButton>
        <IconButton
          name="full"
          chord="1"
          isOff={false}
          isOn={!zoom.isFitted && zoom.scale === 1}
          onClick={zoom.full}
        >
          <path d="M4.5 6.5L6.5 5v10M13.5 6.5l2-1.5v10M10 8v.01M10 12.5v.01" />
        </IconButton>
      </span>
    </div>
  );
}

interface IconButtonProps {
  readonly name: SheetsWord;
  readonly chord: string;
  readonly isOff: boolean;
  /** Not given: it is no switch. */
  readonly isOn?: boolean;
  readonly onClick: () => void;
  readonly children: ReactNode;
}

function IconButton({ name, chord, isOff, isOn, onClick, children }: IconButtonProps) {
  const w = useSheetWords();
  const tip = `${w(name)} (${chord})`;
  return (
    <button
      type="button"
      className="stage-button"
      aria-label={tip}
      title={tip}
      aria-disabled={isOff}
      {...(isOn === undefined ? {} : { "aria-pressed": isOn })}
      onClick={isOff ? undefined : onClick}
    >
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" className="icon">
        {children}
      </svg>
    </button>
  );
}
