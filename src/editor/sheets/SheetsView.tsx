// The sheets over the plan: at the left what there is, ticked or not, and what goes into the title blocks; at the right
// the sheet in hand as it is printed. From here they are printed and saved.

import { useCallback, useEffect, useRef } from "react";
import { changeScreen, REGION } from "../live/actions.ts";
import { useBench, useEditorState } from "../live/useWorkbench.tsx";
import { useOverKeys } from "../over/useOverKeys.ts";
import { useOverPlan } from "../over/useOverPlan.ts";
import { chosenKeys, tickedOf, unlistedCount } from "./choice.ts";
import { FieldsForm } from "./FieldsForm.tsx";
import { Preview } from "./Preview.tsx";
import { SheetFilter } from "./SheetFilter.tsx";
import { SheetNotice } from "./SheetNotice.tsx";
import { SheetsBar } from "./SheetsBar.tsx";
import { SheetTree } from "./SheetTree.tsx";
import { StageBar } from "./StageBar.tsx";
import { allSheets } from "./sheetList.ts";
import { useChoice } from "./useChoice.ts";
import { useFields } from "./useFields.ts";
import { useHand } from "./useHand.ts";
import { useSheetFiles } from "./useSheetFiles.ts";
import { useSheets } from "./useSheets.ts";
import { useSheetWords } from "./useSheetWords.ts";
import { useZoom } from "./useZoom.ts";
import "./sheets.css";

/** Before there is a sheet to measure by, mm. */
const A4 = { width: 297, height: 210 };

export function SheetsView() {
  const bench = useBench();
  const w = useSheetWords();
  const { name: project } = useEditorState().history.doc;
  const [fields, changeFields] = useFields(project);
  const sheets = useSheets(fields);
  const { list } = sheets;
  const [leftOut, toggle] = useChoice(list);
  const hand = useHand(list);
  const { rows, sheet, walk } = hand;
  const keys = list === null ? [] : chosenKeys(list, leftOut);
  const files = useSheetFiles(sheets, { keys, project, w });
  const stage = useRef<HTMLElement>(null);
  const zoom = useZoom(stage, sheet ?? A4);
  const close = useCallback(() => changeScreen(bench, { over: null }), [bench]);
  useOverPlan(bench, close);
  useOverKeys([
    ["Escape", close],
    ["PageDown", () => walk(1)],
    ["PageUp", () => walk(-1)],
    ["ArrowRight", () => walk(1)],
    ["ArrowLeft", () => walk(-1)],
    ["0", zoom.fit],
    ["1", zoom.full],
    ["+", zoom.zoomIn],
    ["=", zoom.zoomIn],
    ["\u2212", zoom.zoomOut],
    ["Ctrl+P", files.print],
  ]);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const listed = rows.flatMap((row) => (row.kind === "sheet" ? row.keys : []));
  const all = list === null ? 0 : allSheets(list).length;
  return (
    <section className="sheets" aria-label={w("title")} {...{ [REGION]: "sheets" }}>
      <SheetsBar
        heading={heading}
        sheets={sheets}
        files={files}
        shown={sheet?.key ?? null}
        chosen={keys.length}
        unlisted={unlistedCount(keys, listed)}
        onClose={close}
      />
      <div className="sheets-side">
        <SheetNotice sheets={sheets} />
        {list === null || all === 0 ? null : (
          <>
            <SheetFilter
              list={list}
              filter={hand.filter}
              ticked={tickedOf(listed, leftOut)}
              chosen={keys.length}
              all={all}
              onFilter={hand.setFilter}
              onToggle={() => toggle(listed)}
            />
            <SheetTree
              rows={rows}
              leftOut={leftOut}
              row={hand.row}
              shown={sheet?.key ?? null}
              onRow={hand.take}
              onToggle={toggle}
            />
          </>
        )}
        <FieldsForm fields={fields} onChange={changeFields} />
      </div>
      <div className="sheets-main">
        <StageBar hand={hand} zoom={zoom} />
        <section className="stage" ref={stage} tabIndex={-1} aria-label={w("preview")}>
          {list === null || sheet === null ? null : (
            <Preview sheet={sheet} zoom={zoom} client={sheets.client} list={list} isStale={sheets.isStale} />
          )}
        </section>
      </div>
    </section>
  );
}
