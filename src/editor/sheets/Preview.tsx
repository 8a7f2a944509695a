// The sheet in hand as it is printed: the very SVG that is saved and that the command line writes, on white paper in
// either theme.

import { useEffect, useRef, useState } from "react";
import type { SheetClient } from "./client.ts";
import { loadTypeface } from "./loadTypeface.ts";
import type { SheetEntry, SheetList } from "./sheetList.ts";
import { shownWidth, type Zoom } from "./useZoom.ts";

export interface PreviewProps {
  readonly sheet: SheetEntry;
  readonly zoom: Zoom;
  readonly client: SheetClient;
  /** Another list has other sheets: then this one is asked for anew. */
  readonly list: SheetList;
  readonly isStale: boolean;
}

export function Preview({ sheet, zoom, client, list, isStale }: PreviewProps) {
  const drawn = useSvg(client, list, sheet.key);
  const paper = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (drawn !== null) paper.current?.replaceChildren(drawn.svg);
  }, [drawn]);
  const width = shownWidth(sheet.width, zoom.scale);
  return (
    <div
      className="paper"
      ref={paper}
      style={{ width, aspectRatio: `${sheet.width} / ${sheet.height}` }}
      data-shown={drawn?.key ?? ""}
      data-stale={isStale || drawn?.key !== sheet.key}
    />
  );
}

interface Drawn {
  readonly key: string;
  readonly svg: Node;
}

// The last drawing stays until the next is there.
function useSvg(client: SheetClient, list: SheetList, key: string): Drawn | null {
  const [drawn, setDrawn] = useState<Drawn | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another list has another drawing of the same key
  useEffect(() => {
    let isWanted = true;
    Promise.all([client.svg(key), loadTypeface()]).then(
      ([text]) => {
        if (isWanted) setDrawn({ key, svg: parsed(text) });
      },
      // A sheet that has gone: the list that comes next is without it.
      () => {},
    );
    return () => {
      isWanted = false;
    };
  }, [client, list, key]);
  return drawn;
}

// As XML: whatever a name in the project holds, it is text.
function parsed(text: string): Node {
  return document.importNode(new DOMParser().parseFromString(text, "image/svg+xml").documentElement, true);
}
