// What the header of the pane says: the thing that is selected and its size.

import { find } from "../../plan/document.ts";
import { wallLength } from "../../plan/editAxis.ts";
import { placeWords } from "../chrome/placeWords.ts";
import { useEditorState, useInView, useSpeech } from "../live/useWorkbench.tsx";
import { words } from "../words/say.ts";

export function PaneTitle() {
  const { session } = useEditorState();
  const { unit } = useInView();
  const { t } = useSpeech();
  const { items } = session.selection;
  const [only] = items;
  if (only === undefined) return <b>{t(words("place.nothing"))}</b>;
  if (items.length > 1) return <b>{t(words("place.things", { count: items.length }))}</b>;
  const wall = only.bucket === "walls" ? find(unit.walls, only.id) : undefined;
  return (
    <>
      <b>{t(placeWords(unit, only))}</b>
      {wall === undefined ? null : (
        <span>
          {t(words("things.wall", { length: Math.round(wallLength(wall)), thickness: wall.thickness }))}
        </span>
      )}
    </>
  );
}
