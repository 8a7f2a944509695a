// A project that lists no pours: every unit is one, in the order of the units, which is said and can be written down.

import { useState } from "react";
import { listed } from "../../plan/document.ts";
import { useEditorState } from "../live/useWorkbench.tsx";
import { AddedPieces, AddsCell } from "./Adds.tsx";
import { barScale } from "./pourNames.ts";
import { unitTitle } from "./pourRows.ts";
import type { Needs } from "./useNeeds.ts";
import { useSetWords } from "./useSetWords.ts";

export function UnlistedPours({ needs, onList }: { needs: Needs; onList: () => void }) {
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const [open, setOpen] = useState<string | null>(null);
  const pours = needs.counted?.pours.filter(({ pour }) => pour === null) ?? [];
  const scale = barScale(pours);
  return (
    <>
      <p className="set-note" role="note">
        {w("no-pours", { count: listed(doc.units).length })}{" "}
        <button type="button" className="act" onClick={onList}>
          {w("list-units")}
        </button>
      </p>
      <ol className="unlisted">
        {pours.map((need) => {
          const title = unitTitle(doc, need.unit);
          const isOpen = open === need.unit;
          return (
            <li key={need.unit}>
              <span className="unlisted-name">{title}</span>
              <AddsCell
                need={need}
                scale={scale}
                isStale={needs.isStale}
                title={title}
                isOpen={isOpen}
                onOpen={() => setOpen(isOpen ? null : need.unit)}
              />
              {isOpen ? <AddedPieces adds={need.adds} /> : null}
            </li>
          );
        })}
      </ol>
    </>
  );
}
