// The other files there are: the sheet in hand as SVG, and the tables for a spreadsheet.

import { type KeyboardEvent, useRef } from "react";
import type { SheetFiles } from "./useSheetFiles.ts";
import { useSheetWords } from "./useSheetWords.ts";

export interface MoreFilesProps {
  readonly files: SheetFiles;
  readonly shown: string | null;
  readonly tables: readonly string[];
}

export function MoreFiles({ files, shown, tables }: MoreFilesProps) {
  const w = useSheetWords();
  const menu = useRef<HTMLDetailsElement>(null);
  if (shown === null) return null;
  const close = () => {
    if (menu.current !== null) menu.current.open = false;
  };
  const chosen = (save: () => void) => () => {
    close();
    menu.current?.querySelector("summary")?.focus();
    save();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || menu.current?.open !== true) return;
    close();
    menu.current.querySelector("summary")?.focus();
    event.preventDefault();
  };
  return (
    <details
      className="sheets-more"
      ref={menu}
      onKeyDown={onKeyDown}
      onBlur={({ currentTarget, relatedTarget }) => {
        if (!currentTarget.contains(relatedTarget)) close();
      }}
    >
      <summary className="act">{w("more")}</summary>
      <div>
        <button type="button" onClick={chosen(() => files.saveSvg(shown))}>
          {w("svg")}
        </button>
        {tables.map((name) => (
          <button key={name} type="button" onClick={chosen(() => files.saveTable(name))}>
            {name}
          </button>
        ))}
      </div>
    </details>
  );
}
