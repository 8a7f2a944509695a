// The bar of the view: what is done with the chosen sheets, what is going on, the way back.

import type { RefObject } from "react";
import { MoreFiles } from "./MoreFiles.tsx";
import type { SheetFiles } from "./useSheetFiles.ts";
import type { Sheets } from "./useSheets.ts";
import { useSheetWords } from "./useSheetWords.ts";

export interface SheetsBarProps {
  readonly heading: RefObject<HTMLHeadingElement | null>;
  readonly sheets: Sheets;
  readonly files: SheetFiles;
  /** The sheet in hand. */
  readonly shown: string | null;
  /** How many sheets are ticked: what is printed and saved. */
  readonly chosen: number;
  /** How many of those the filter keeps out of the list. */
  readonly unlisted: number;
  readonly onClose: () => void;
}

export function SheetsBar(props: SheetsBarProps) {
  const { heading, sheets, files, shown, chosen, unlisted, onClose } = props;
  const w = useSheetWords();
  const { list, isMaking, isStale } = sheets;
  const going = isMaking ? w(isStale ? "renewing" : "making") : files.said;
  const isOff = shown === null || isMaking;
  return (
    <header className="sheets-bar">
      <h2 ref={heading} tabIndex={-1}>
        {w("title")}
      </h2>
      <p role="status">{going}</p>
      {unlisted === 0 ? null : (
        <small className="sheets-unlisted" role="note">
          {w("unlisted", { count: unlisted })}
        </small>
      )}
      <span className="sheets-acts">
        <MoreFiles files={files} shown={shown} tables={list?.tables ?? []} />
        <button type="button" className="act" aria-disabled={isOff} onClick={files.savePdf}>
          {w("pdf", { count: chosen })}
        </button>
        <button
          type="button"
          className="act strong"
          aria-disabled={isOff}
          title={w("print-tip")}
          onClick={files.print}
        >
          {w("print", { count: chosen })} <kbd>Ctrl P</kbd>
        </button>
        <button type="button" className="act" onClick={onClose}>
          {w("close")} <kbd>Esc</kbd>
        </button>
      </span>
    </header>
  );
}
